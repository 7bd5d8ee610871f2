import { withHarness } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The harness has a little slack: neither tight nor hanging. */
export const harnessHasSlack: Rule = {
  id: 'harness-has-slack',
  group: 'workmanship',
  severity: 'reason',
  summary: 'The harness has a little slack: neither tight nor hanging.',
  why: 'A tight lead pulls its joint apart when the panel moves; a hanging one is caught and torn out.',
  source:
    'FAA AC 43.13-1B 11-118 (13 mm, 1/2 in, deflection between supports under normal hand pressure); aircraft practice, a strict yardstick',
  check: ({ job }) => {
    const { harness } = workDone(job);
    if (harness?.slack === 'tight') {
      return [
        {
          at: 'harness',
          what: 'The harness is tight.',
          whatToDo: 'Free it until it gives about 13 mm (1/2 in) to the hand between ties.',
        },
      ];
    }
    if (harness?.slack === 'loose') {
      return [
        {
          at: 'harness',
          what: 'The harness hangs loose.',
          whatToDo:
            'Fold and tie the spare length until it gives no more than about 13 mm (1/2 in) to the hand between ties.',
          severity: 'advise',
        },
      ];
    }
    return [];
  },
  examples: [
    { name: 'right slack', change: withHarness({ slack: 'right' }), finds: [] },
    {
      name: 'tight harness',
      change: withHarness({ slack: 'tight' }),
      finds: [
        {
          at: 'harness',
          severity: 'reason',
          what: 'The harness is tight.',
          whatToDo: 'Free it until it gives about 13 mm (1/2 in) to the hand between ties.',
        },
      ],
    },
    {
      name: 'hanging harness',
      change: withHarness({ slack: 'loose' }),
      finds: [
        {
          at: 'harness',
          severity: 'advise',
          what: 'The harness hangs loose.',
          whatToDo:
            'Fold and tie the spare length until it gives no more than about 13 mm (1/2 in) to the hand between ties.',
        },
      ],
    },
  ],
};
