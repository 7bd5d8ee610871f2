import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Nothing is joined to restraint wiring (yellow sleeve).',
  why: 'Restraint wiring fires air bags and belt tensioners; a probe or splice can fire or disable them.',
  says: {
    'joined to it': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The ${voice.lead(joint.lead)} lead is joined to a wire in a yellow sleeve.`,
      whatToDo: "Stop. Leave it as it is, do not touch it again, and have the maker's workshop look at it.",
    }),
  },
};

/** Nothing is joined to restraint wiring (yellow sleeve). */
export const noTapOnRestraintWiring = defineRule({
  id: 'no-tap-on-restraint-wiring',
  group: 'wiring',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => job.probePoints?.some((point) => point.name === made.point && point.sleeve === 'yellow'))
      .map(({ lead }) => ({ at: lead, says: 'joined to it', figures: { lead } })),
  examples: [
    { name: 'plain wires', change: (job) => job, finds: [] },
    {
      name: 'a yellow sleeve',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P1' ? { ...point, sleeve: 'yellow' } : point,
        ),
      }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The supply lead is joined to a wire in a yellow sleeve.',
          whatToDo: "Stop. Leave it as it is, do not touch it again, and have the maker's workshop look at it.",
        },
      ],
    },
  ],
});
