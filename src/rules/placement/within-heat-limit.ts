import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import type { Hit } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The place stays within the temperatures the device can bear.',
  why: 'A device cooked above its limit fails, or its battery does; below its limit it does not wake.',
  says: {
    'too hot': (place: { celsius: number; most: number }) => ({
      what: `The place may reach ${place.celsius} °C; the device bears ${place.most} °C.`,
      whatToDo: 'Move it to a cooler place, away from heater ducts and sun.',
    }),
    'too cold': (place: { celsius: number; least: number }) => ({
      what: `The place may fall to ${place.celsius} °C; the device works down to ${place.least} °C.`,
      whatToDo: 'Move it inside, or fit a device made for such cold.',
    }),
    'engine bay, heat not recorded': (place: { most: number }) => ({
      what: `The device sits in the engine bay and the heat there is not recorded; it bears ${place.most} °C.`,
      whatToDo: 'Measure beside it after a hot run and record it, or move the device out.',
    }),
  },
};

/** The place stays within the temperatures the device can bear. */
export const withinHeatLimit = defineRule({
  id: 'within-heat-limit',
  group: 'placement',
  severity: 'reason',
  source: "the device's own profile; that an engine bay is hotter than most devices bear is common practice, no source",
  words,
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement === undefined || profile === null) return [];
    const { expectedCelsiusMax: hottest, expectedCelsiusMin: coldest, zone } = placement;
    const { operatingCelsiusMax: most, operatingCelsiusMin: least } = profile;
    const hits: Hit<typeof words>[] = [];
    if (hottest !== undefined && hottest > most)
      hits.push({ at: 'device', says: 'too hot', figures: { celsius: hottest, most } });
    if (coldest !== undefined && coldest < least)
      hits.push({ at: 'device', says: 'too cold', figures: { celsius: coldest, least } });
    if (hottest === undefined && zone === 'engine bay')
      hits.push({ at: 'device', says: 'engine bay, heat not recorded', figures: { most } });
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
});
