import { withPlacement } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The place stays within the temperatures the device can bear. */
export const withinHeatLimit: Rule = {
  id: 'within-heat-limit',
  group: 'placement',
  severity: 'reason',
  summary: 'The place stays within the temperatures the device can bear.',
  why: 'A device cooked above its limit fails, or its battery does; below its limit it does not wake.',
  source: "the device's own profile; that an engine bay is hotter than most devices bear is common practice, no source",
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement === undefined || profile === null) return [];
    const { expectedCelsiusMax: most, expectedCelsiusMin: least } = placement;
    const hits: RuleHit[] = [];
    if (most !== undefined && most > profile.operatingCelsiusMax)
      hits.push({
        at: 'device',
        what: `The place may reach ${most} °C; the device bears ${profile.operatingCelsiusMax} °C.`,
        whatToDo: 'Move it to a cooler place, away from heater ducts and sun.',
      });
    if (least !== undefined && least < profile.operatingCelsiusMin)
      hits.push({
        at: 'device',
        what: `The place may fall to ${least} °C; the device works down to ${profile.operatingCelsiusMin} °C.`,
        whatToDo: 'Move it inside, or fit a device made for such cold.',
      });
    if (most === undefined && placement.zone === 'engine bay')
      hits.push({
        at: 'device',
        what: `The device sits in the engine bay and the heat there is not recorded; it bears ${profile.operatingCelsiusMax} °C.`,
        whatToDo: 'Measure beside it after a hot run and record it, or move the device out.',
      });
    return hits;
  },
  examples: [
    { name: 'as cool as a cab in the shade', change: withPlacement({ expectedCelsiusMax: 30 }), finds: [] },
    {
      name: '120 °C beside the exhaust',
      change: withPlacement({ expectedCelsiusMax: 120 }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The place may reach 120 °C; the device bears 60 °C.',
          whatToDo: 'Move it to a cooler place, away from heater ducts and sun.',
        },
      ],
    },
    {
      name: '-40 °C where -20 °C is borne',
      change: withPlacement({ expectedCelsiusMin: -40 }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The place may fall to -40 °C; the device works down to -20 °C.',
          whatToDo: 'Move it inside, or fit a device made for such cold.',
        },
      ],
    },
    {
      name: 'engine bay without a temperature',
      change: withPlacement({ zone: 'engine bay', expectedCelsiusMax: undefined }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device sits in the engine bay and the heat there is not recorded; it bears 60 °C.',
          whatToDo: 'Measure beside it after a hot run and record it, or move the device out.',
        },
      ],
    },
  ],
};
