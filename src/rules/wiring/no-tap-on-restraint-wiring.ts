import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Nothing is joined to restraint wiring (yellow sleeve). */
export const noTapOnRestraintWiring: Rule = {
  id: 'no-tap-on-restraint-wiring',
  group: 'wiring',
  severity: 'block',
  summary: 'Nothing is joined to restraint wiring (yellow sleeve).',
  why: 'Restraint wiring fires air bags and belt tensioners; a probe or splice can fire or disable them.',
  source: 'common practice, no source',
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => job.probePoints?.some((point) => point.name === made.point && point.sleeve === 'yellow'))
      .map(
        (made): RuleHit => ({
          at: made.lead,
          what: `The ${made.lead} lead is joined to a wire in a yellow sleeve.`,
          whatToDo: "Stop. Leave it as it is, do not touch it again, and have the maker's workshop look at it.",
        }),
      ),
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
};
