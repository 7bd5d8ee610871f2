import { withHarness } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** No bend is tighter than ten times the diameter of the bundle. */
export const bendRadiusIsWideEnough: Rule = {
  id: 'bend-radius-is-wide-enough',
  group: 'workmanship',
  severity: 'advise',
  summary: 'No bend is tighter than ten times the diameter of the bundle.',
  why: 'A tight bend works the strands and presses through the insulation.',
  source: 'Army TM 1-1500-204-23-4 (10 times the outside diameter); 3 times at a supported terminal: from memory',
  check: ({ job }) => {
    const { harness } = workDone(job);
    const radius = harness?.bendRadiusTimesDiameter;
    if (radius === undefined || radius >= 10) return [];
    return [
      {
        at: 'harness',
        what: `The tightest bend is ${radius} times the diameter of the bundle; 10 times or more is wanted.`,
        whatToDo:
          radius < 3
            ? 'Open the bend: less than 3 times is too tight even at a supported terminal.'
            : 'Open the bend, or support it at the terminal.',
        ...(radius < 3 ? { severity: 'reason' as const } : {}),
      },
    ];
  },
  examples: [
    { name: 'bend of ten diameters', change: withHarness({ bendRadiusTimesDiameter: 10 }), finds: [] },
    {
      name: 'bend of nine diameters',
      change: withHarness({ bendRadiusTimesDiameter: 9 }),
      finds: [
        {
          at: 'harness',
          severity: 'advise',
          what: 'The tightest bend is 9 times the diameter of the bundle; 10 times or more is wanted.',
          whatToDo: 'Open the bend, or support it at the terminal.',
        },
      ],
    },
    {
      name: 'bend of two diameters',
      change: withHarness({ bendRadiusTimesDiameter: 2 }),
      finds: [
        {
          at: 'harness',
          severity: 'reason',
          what: 'The tightest bend is 2 times the diameter of the bundle; 10 times or more is wanted.',
          whatToDo: 'Open the bend: less than 3 times is too tight even at a supported terminal.',
        },
      ],
    },
  ],
};
