import { defineRule } from '../define-rule.ts';
import { withHarness } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** Least bend radius in diameters of the bundle (Army TM 1-1500-204-23-4), and at a supported terminal (from memory). */
export const bendTimesMin = 10;
const bendTimesMinAtTerminal = 3;

const words = {
  summary: (voice: Voice) => `No bend is tighter than ${voice.number(bendTimesMin)} times the diameter of the bundle.`,
  why: 'A tight bend works the strands and presses through the insulation.',
  says: {
    'too tight': (bend: { times: number; least: number }, voice: Voice) => ({
      what: `The tightest bend is ${voice.decimal(bend.times)} times the diameter of the bundle; ${bend.least} times or more is wanted.`,
      whatToDo: 'Open the bend, or support it at the terminal.',
    }),
    'too tight at a terminal': (bend: { times: number; least: number; leastAtTerminal: number }, voice: Voice) => ({
      what: `The tightest bend is ${voice.decimal(bend.times)} times the diameter of the bundle; ${bend.least} times or more is wanted.`,
      whatToDo: `Open the bend: less than ${bend.leastAtTerminal} times is too tight even at a supported terminal.`,
    }),
  },
};

/** No bend is tighter than ten times the diameter of the bundle. */
export const bendRadiusIsWideEnough = defineRule({
  id: 'bend-radius-is-wide-enough',
  group: 'workmanship',
  severity: 'advise',
  source: 'Army TM 1-1500-204-23-4 (10 times the outside diameter); 3 times at a supported terminal: from memory',
  words,
  check: ({ job }) => {
    const times = workDone(job).harness?.bendRadiusTimesDiameter;
    const [least, leastAtTerminal] = [bendTimesMin, bendTimesMinAtTerminal];
    if (times === undefined || times >= least) return [];
    return times < leastAtTerminal
      ? [
          {
            at: 'harness',
            says: 'too tight at a terminal',
            figures: { times, least, leastAtTerminal },
            severity: 'reason',
          },
        ]
      : [{ at: 'harness', says: 'too tight', figures: { times, least } }];
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
});
