import { withHarness } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The harness runs in loom or sleeve. */
export const harnessIsLoomed: Rule = {
  id: 'harness-is-loomed',
  group: 'workmanship',
  severity: 'advise',
  summary: 'The harness runs in loom or sleeve.',
  why: 'Loom takes the chafing that would otherwise reach the insulation.',
  source: 'common practice, no source; 49 CFR 393.28 (SAE J1292) asks for a sheath on trucks',
  check: ({ job }) => {
    const { harness } = workDone(job);
    if (harness === undefined || !(harness.loomed === false)) return [];
    return [
      {
        at: 'harness',
        what: 'The harness runs without loom.',
        whatToDo: 'Cover it with loom or sleeve over its whole length.',
      },
    ];
  },
  examples: [
    { name: 'loomed harness', change: withHarness({ loomed: true }), finds: [] },
    {
      name: 'bare harness',
      change: withHarness({ loomed: false }),
      finds: [
        {
          at: 'harness',
          severity: 'advise',
          what: 'The harness runs without loom.',
          whatToDo: 'Cover it with loom or sleeve over its whole length.',
        },
      ],
    },
  ],
};
