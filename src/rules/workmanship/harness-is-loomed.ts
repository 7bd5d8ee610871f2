import { defineRule } from '../define-rule.ts';
import { withHarness } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The harness runs in loom or sleeve.',
  why: 'Loom takes the chafing that would otherwise reach the insulation.',
  says: {
    'not loomed': () => ({
      what: 'The harness runs without loom.',
      whatToDo: 'Cover it with loom or sleeve over its whole length.',
    }),
  },
};

/** The harness runs in loom or sleeve. */
export const harnessIsLoomed = defineRule({
  id: 'harness-is-loomed',
  group: 'workmanship',
  severity: 'advise',
  source: 'common practice, no source; 49 CFR 393.28 (SAE J1292) asks for a sheath on trucks',
  words,
  check: ({ job }) => (workDone(job).harness?.loomed === false ? [{ at: 'harness', says: 'not loomed' }] : []),
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
});
