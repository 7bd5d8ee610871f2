import { defineRule } from '../define-rule.ts';
import { withHarness } from '../overlay.ts';
import { workDone } from '../work-done.ts';

/** FAA AC 43.13-1B 11-158(b): 12 in. */
export const tieMillimetresMax = 305;
/** FAA AC 43.13-1B 11-96(a): 24 in. */
export const supportMillimetresMax = 610;

const words = {
  summary: () =>
    `The harness is tied at least every ${tieMillimetresMax} mm, and supported at least every ${supportMillimetresMax} mm.`,
  why: 'A harness that hangs free swings, chafes and pulls at its joints.',
  says: {
    'not tied': (ties: { most: number }) => ({
      what: 'The harness is not tied.',
      whatToDo: `Tie it at least every ${ties.most} mm.`,
    }),
    'ties too far apart': (ties: { interval: number; most: number }) => ({
      what: `The harness is tied every ${ties.interval} mm; ${ties.most} mm is the most.`,
      whatToDo: `Add ties until no gap is over ${ties.most} mm.`,
    }),
    'supports too far apart': (ties: { interval: number; most: number; mostOfSupports: number }) => ({
      what: `The harness is tied every ${ties.interval} mm; ${ties.most} mm is the most, and ${ties.mostOfSupports} mm the most between supports.`,
      whatToDo: `Add ties until no gap is over ${ties.most} mm.`,
    }),
  },
};

/** The harness is tied at least every 305 mm, and supported at least every 610 mm. */
export const harnessIsTiedAtIntervals = defineRule({
  id: 'harness-is-tied-at-intervals',
  group: 'workmanship',
  severity: 'reason',
  source:
    'FAA AC 43.13-1B 11-158(b) (305 mm, 12 in) and 11-96(a) (610 mm, 24 in); aircraft practice, a strict yardstick',
  words,
  check: ({ job }) => {
    const { harness } = workDone(job);
    if (harness === undefined) return [];
    const [most, mostOfSupports] = [tieMillimetresMax, supportMillimetresMax];
    if (harness.tied === false) return [{ at: 'harness', says: 'not tied', figures: { most } }];
    const interval = harness.tieIntervalMillimetres;
    if (interval === undefined || interval <= most) return [];
    return interval > mostOfSupports
      ? [{ at: 'harness', says: 'supports too far apart', figures: { interval, most, mostOfSupports } }]
      : [{ at: 'harness', says: 'ties too far apart', figures: { interval, most }, severity: 'advise' }];
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
});
