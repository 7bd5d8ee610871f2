import { withHarness } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** FAA AC 43.13-1B 11-158(b): 12 in. */
const tieMillimetresMax = 305;
/** FAA AC 43.13-1B 11-96(a): 24 in. */
const supportMillimetresMax = 610;

/** The harness is tied at least every 305 mm, and supported at least every 610 mm. */
export const harnessIsTiedAtIntervals: Rule = {
  id: 'harness-is-tied-at-intervals',
  group: 'workmanship',
  severity: 'reason',
  summary: 'The harness is tied at least every 305 mm, and supported at least every 610 mm.',
  why: 'A harness that hangs free swings, chafes and pulls at its joints.',
  source:
    'FAA AC 43.13-1B 11-158(b) (305 mm, 12 in) and 11-96(a) (610 mm, 24 in); aircraft practice, a strict yardstick',
  check: ({ job }) => {
    const { harness } = workDone(job);
    if (harness === undefined) return [];
    if (harness.tied === false) {
      return [
        { at: 'harness', what: 'The harness is not tied.', whatToDo: `Tie it at least every ${tieMillimetresMax} mm.` },
      ];
    }
    const interval = harness.tieIntervalMillimetres;
    if (interval === undefined || interval <= tieMillimetresMax) return [];
    return [
      {
        at: 'harness',
        what: `The harness is tied every ${interval} mm; ${tieMillimetresMax} mm is the most${interval > supportMillimetresMax ? `, and ${supportMillimetresMax} mm the most between supports` : ''}.`,
        whatToDo: `Add ties until no gap is over ${tieMillimetresMax} mm.`,
        ...(interval > supportMillimetresMax ? {} : { severity: 'advise' as const }),
      },
    ];
  },
  examples: [
    { name: 'ties every 305 mm', change: withHarness({ tied: true, tieIntervalMillimetres: 305 }), finds: [] },
    {
      name: 'ties every 306 mm',
      change: withHarness({ tied: true, tieIntervalMillimetres: 306 }),
      finds: [
        {
          at: 'harness',
          severity: 'advise',
          what: 'The harness is tied every 306 mm; 305 mm is the most.',
          whatToDo: 'Add ties until no gap is over 305 mm.',
        },
      ],
    },
    {
      name: 'ties every 611 mm',
      change: withHarness({ tied: true, tieIntervalMillimetres: 611 }),
      finds: [
        {
          at: 'harness',
          severity: 'reason',
          what: 'The harness is tied every 611 mm; 305 mm is the most, and 610 mm the most between supports.',
          whatToDo: 'Add ties until no gap is over 305 mm.',
        },
      ],
    },
    {
      name: 'no ties',
      change: withHarness({ tied: false }),
      finds: [
        {
          at: 'harness',
          severity: 'reason',
          what: 'The harness is not tied.',
          whatToDo: 'Tie it at least every 305 mm.',
        },
      ],
    },
  ],
};
