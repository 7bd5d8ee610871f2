import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Nothing is joined to high-voltage wiring (orange sleeve). */
export const noTapOnHighVoltageWiring: Rule = {
  id: 'no-tap-on-high-voltage-wiring',
  group: 'wiring',
  severity: 'block',
  summary: 'Nothing is joined to high-voltage wiring (orange sleeve).',
  why: 'High-voltage cable can kill.',
  source: 'SAE J1673 and UNECE R100, orange (from memory)',
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => job.probePoints?.some((point) => point.name === made.point && point.sleeve === 'orange'))
      .map(
        (made): RuleHit => ({
          at: made.lead,
          what: `The ${made.lead} lead is joined to a wire in an orange sleeve.`,
          whatToDo: "Stop. Leave it as it is, do not touch it again, and have the maker's workshop look at it.",
        }),
      ),
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
};
