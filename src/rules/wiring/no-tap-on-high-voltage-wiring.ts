import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Nothing is joined to high-voltage wiring (orange sleeve).',
  why: 'High-voltage cable can kill.',
  says: {
    'joined to it': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The ${voice.lead(joint.lead)} lead is joined to a wire in an orange sleeve.`,
      whatToDo: "Stop. Leave it as it is, do not touch it again, and have the maker's workshop look at it.",
    }),
  },
};

/** Nothing is joined to high-voltage wiring (orange sleeve). */
export const noTapOnHighVoltageWiring = defineRule({
  id: 'no-tap-on-high-voltage-wiring',
  group: 'wiring',
  severity: 'block',
  source: 'SAE J1673 and UNECE R100, orange (from memory)',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => job.probePoints?.some((point) => point.name === made.point && point.sleeve === 'orange'))
      .map(({ lead }) => ({ at: lead, says: 'joined to it', figures: { lead } })),
  examples: [
    { name: 'plain wires', change: (job) => job, finds: [] },
    {
      name: 'an orange sleeve',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P1' ? { ...point, sleeve: 'orange' } : point,
        ),
      }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The supply lead is joined to a wire in an orange sleeve.',
          whatToDo: "Stop. Leave it as it is, do not touch it again, and have the maker's workshop look at it.",
        },
      ],
    },
  ],
});
