import { withPlacement } from './overlay.ts';
import type { Rule } from './rule.ts';
import { workDone } from './work-done.ts';

/** The place stays within the temperature the device can bear. */
export const withinHeatLimit: Rule = {
  id: 'within-heat-limit',
  group: 'placement',
  severity: 'reason',
  summary: 'The place stays within the temperature the device can bear.',
  why: 'A device cooked above its limit fails, or its battery does.',
  source: "the device's own profile",
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (
      placement === undefined ||
      !(
        profile !== null &&
        placement.expectedCelsiusMax !== undefined &&
        placement.expectedCelsiusMax > profile.operatingCelsiusMax
      )
    )
      return [];
    return [
      {
        at: 'device',
        what: `The place may reach ${placement.expectedCelsiusMax} °C; the device bears ${profile.operatingCelsiusMax} °C.`,
        whatToDo: 'Move it to a cooler place, away from heater ducts and sun.',
      },
    ];
  },
  examples: [
    { name: 'as cool as a cab in the shade', change: withPlacement({ expectedCelsiusMax: 30 }), finds: [] },
    { name: '120 °C beside the exhaust', change: withPlacement({ expectedCelsiusMax: 120 }), finds: ['device'] },
  ],
};
