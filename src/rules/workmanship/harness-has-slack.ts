import { defineRule } from '../define-rule.ts';
import { withHarness } from '../overlay.ts';
import { workDone } from '../work-done.ts';

/** FAA AC 43.13-1B 11-118: 1/2 in. */
const slackMillimetresMax = 13;

const words = {
  summary: () => 'The harness has a little slack: neither tight nor hanging.',
  why: 'A tight lead pulls its joint apart when the panel moves; a hanging one is caught and torn out.',
  says: {
    tight: (slack: { most: number }) => ({
      what: 'The harness is tight.',
      whatToDo: `Free it until it gives about ${slack.most} mm (1/2 in) to the hand between ties.`,
    }),
    loose: (slack: { most: number }) => ({
      what: 'The harness hangs loose.',
      whatToDo: `Fold and tie the spare length until it gives no more than about ${slack.most} mm (1/2 in) to the hand between ties.`,
    }),
  },
};

/** The harness has a little slack: neither tight nor hanging. */
export const harnessHasSlack = defineRule({
  id: 'harness-has-slack',
  group: 'workmanship',
  severity: 'reason',
  source:
    'FAA AC 43.13-1B 11-118 (13 mm, 1/2 in, deflection between supports under normal hand pressure); aircraft practice, a strict yardstick',
  words,
  check: ({ job }) => {
    const slack = workDone(job).harness?.slack;
    const most = slackMillimetresMax;
    if (slack === 'tight') return [{ at: 'harness', says: 'tight', figures: { most } }];
    return slack === 'loose' ? [{ at: 'harness', says: 'loose', figures: { most }, severity: 'advise' }] : [];
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
});
