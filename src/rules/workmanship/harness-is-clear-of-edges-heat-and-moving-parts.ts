import { withHarness } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The harness touches no sharp edge, hot part, moving part or fuel line. */
export const harnessIsClearOfEdgesHeatAndMovingParts: Rule = {
  id: 'harness-is-clear-of-edges-heat-and-moving-parts',
  group: 'workmanship',
  severity: 'reason',
  summary: 'The harness touches no sharp edge, hot part, moving part or fuel line.',
  why: 'Insulation that rubs, melts or is caught ends in a short circuit, at a fuel line in a fire.',
  source:
    'FAA AC 43.13-1B 11-96 (clearance 9.5 mm, 3/8 in; fuel lines 152 mm, 6 in); 13 CCR 1249; block at moving parts and fuel lines: common practice, no source',
  check: ({ job }) =>
    (workDone(job).harness?.touches ?? []).map((part) => ({
      at: part,
      what: `The harness touches a ${part}.`,
      whatToDo:
        part === 'fuel line'
          ? 'Route it at least 152 mm (6 in) from the fuel line.'
          : 'Route it clear by 10 mm or more, or put a grommet or sleeve between.',
      ...(part === 'moving part' || part === 'fuel line' ? { severity: 'block' as const } : {}),
    })),
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
  ],
};
