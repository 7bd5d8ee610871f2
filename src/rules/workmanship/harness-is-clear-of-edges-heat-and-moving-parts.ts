import type { Harness } from '../../records/placement.ts';
import { defineRule } from '../define-rule.ts';
import { withHarness } from '../overlay.ts';
import { workDone } from '../work-done.ts';

type TouchedPart = Exclude<Harness['touches'][number], 'fuel line'>;

/** FAA AC 43.13-1B 11-96: 3/8 in, rounded up. */
const clearanceMillimetresMin = 10;
/** FAA AC 43.13-1B 11-96(w): 6 in. */
const fuelLineMillimetresMin = 152;

const words = {
  summary: () => 'The harness touches no sharp edge, hot part, moving part or fuel line.',
  why: 'Insulation that rubs, melts or is caught ends in a short circuit, at a fuel line in a fire.',
  says: {
    touches: (harness: { part: TouchedPart; clearance: number }) => ({
      what: `The harness touches a ${harness.part}.`,
      whatToDo: `Route it clear by ${harness.clearance} mm or more, or put a grommet or sleeve between.`,
    }),
    'touches a fuel line': (harness: { clearance: number }) => ({
      what: 'The harness touches a fuel line.',
      whatToDo: `Route it at least ${harness.clearance} mm (6 in) from the fuel line.`,
    }),
  },
};

/** The harness touches no sharp edge, hot part, moving part or fuel line. */
export const harnessIsClearOfEdgesHeatAndMovingParts = defineRule({
  id: 'harness-is-clear-of-edges-heat-and-moving-parts',
  group: 'workmanship',
  severity: 'reason',
  source:
    'FAA AC 43.13-1B 11-96 (clearance 9.5 mm, 3/8 in; fuel lines 152 mm, 6 in); 13 CCR 1249; block at moving parts and fuel lines: common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).harness?.touches ?? []).map((part) =>
      part === 'fuel line'
        ? {
            at: part,
            says: 'touches a fuel line',
            figures: { clearance: fuelLineMillimetresMin },
            severity: 'block',
          }
        : {
            at: part,
            says: 'touches',
            figures: { part, clearance: clearanceMillimetresMin },
            ...(part === 'moving part' ? { severity: 'block' } : {}),
          },
    ),
  examples: [
    { name: 'harness clear of everything', change: withHarness({ touches: [] }), finds: [] },
    {
      name: 'harness on a sharp edge',
      change: withHarness({ touches: ['sharp edge'] }),
      finds: [
        {
          at: 'sharp edge',
          severity: 'reason',
          what: 'The harness touches a sharp edge.',
          whatToDo: 'Route it clear by 10 mm or more, or put a grommet or sleeve between.',
        },
      ],
    },
    {
      name: 'harness on a moving part and a hot one',
      change: withHarness({ touches: ['moving part', 'hot part'] }),
      finds: [
        {
          at: 'moving part',
          severity: 'block',
          what: 'The harness touches a moving part.',
          whatToDo: 'Route it clear by 10 mm or more, or put a grommet or sleeve between.',
        },
        {
          at: 'hot part',
          severity: 'reason',
          what: 'The harness touches a hot part.',
          whatToDo: 'Route it clear by 10 mm or more, or put a grommet or sleeve between.',
        },
      ],
    },
    {
      name: 'harness on a fuel line',
      change: withHarness({ touches: ['fuel line'] }),
      finds: [
        {
          at: 'fuel line',
          severity: 'block',
          what: 'The harness touches a fuel line.',
          whatToDo: 'Route it at least 152 mm (6 in) from the fuel line.',
        },
      ],
    },
  ],
});
