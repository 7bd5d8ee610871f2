import { defineRule } from '../define-rule.ts';
import { bookIn } from '../example-book.ts';
import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { antennaHits, isRegulated, sweptAreaHits, windscreenWords } from '../windscreen-limits.ts';
import { workDone } from '../work-done.ts';

const onGlass = (fields: Parameters<typeof withPlacement>[0]) =>
  withPlacement({
    zone: 'windscreen',
    inSightLine: false,
    belowSweptTopMillimetres: undefined,
    aboveSweptBottomMillimetres: undefined,
    ...fields,
  });

const localCode = 'The device is on the windscreen; what may stand there is for the local code to say.';

/** MOT inspection manual section 3: the zone in front of the driver, and what may reach into the swept area. */
const britishZone = { wide: 290, wideAboveLimit: 350, tonnes: 3.5, most: 10, mostElsewhere: 40 };

const words = {
  summary: () => 'On a windscreen the device stays within the permitted area and out of the sight lines.',
  why: 'A device lower down hides road, signs and signals, and the carrier is cited for it.',
  says: {
    'in the sight line': () => ({
      what: "The device is in the driver's sight line to road, signs or signals.",
      whatToDo: 'Move it out of the sight line.',
    }),
    'local code': () => ({
      what: localCode,
      whatToDo: 'Look up the local code, or move the device off the windscreen.',
    }),
    // Great Britain, MOT inspection manual section 3
    'local code of Great Britain': (
      zone: {
        wide: number;
        wideAboveLimit: number;
        tonnes: number;
        most: number;
        mostElsewhere: number;
      },
      voice: Voice,
    ) => ({
      what: localCode,
      whatToDo: `Look up the local code. Great Britain, MOT inspection manual section 3: in front of the driver (${zone.wide} mm wide; ${zone.wideAboveLimit} mm above ${voice.decimal(zone.tonnes)} t) at most ${zone.most} mm may reach into the swept area, elsewhere in it ${zone.mostElsewhere} mm.`,
    }),
    ...windscreenWords,
  },
};

/** On a windscreen the device stays within the permitted area and out of the sight lines. */
export const windscreenAreaIsRespected = defineRule({
  id: 'windscreen-area-is-respected',
  group: 'placement',
  severity: 'reason',
  source:
    '49 CFR 393.60(e)(1)(ii), 87 FR 12596 (vehicle safety technology: at most 216 mm, 8.5 in, below the upper edge of the swept area, or at most 175 mm, 7 in, above its lower edge); (e)(1)(i) (antennas: at most 152 mm, 6 in, below the upper edge of the glass, outside the swept area); commercial vehicles: 49 CFR 390.5 (from memory); elsewhere: local code',
  words,
  check: ({ job, book, profile }) => {
    const { placement } = workDone(job);
    if (placement?.zone !== 'windscreen') return [];
    if (placement.inSightLine === true) return [{ at: 'windscreen', says: 'in the sight line' }];
    if (!isRegulated(job.vehicle, book))
      return book.business.address.country === 'GB'
        ? [{ at: 'windscreen', says: 'local code of Great Britain', figures: britishZone, severity: 'advise' }]
        : [{ at: 'windscreen', says: 'local code', severity: 'advise' }];
    return profile?.vehicleSafetyTechnology === false ? antennaHits(placement) : sweptAreaHits(placement, job.day);
  },
  examples: [
    {
      name: '216 mm below the upper edge of the swept area',
      change: onGlass({ belowSweptTopMillimetres: 216 }),
      finds: [],
    },
    {
      name: '217 mm below the upper edge',
      change: onGlass({ belowSweptTopMillimetres: 217 }),
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'The device reaches 217 mm below the upper edge of the swept area (at most 216 mm).',
          whatToDo: 'Move it up or down until one of the two limits holds, or off the windscreen.',
        },
      ],
    },
    { name: '175 mm above the lower edge', change: onGlass({ aboveSweptBottomMillimetres: 175 }), finds: [] },
    {
      name: 'in the sight line',
      change: onGlass({ inSightLine: true, belowSweptTopMillimetres: 100 }),
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: "The device is in the driver's sight line to road, signs or signals.",
          whatToDo: 'Move it out of the sight line.',
        },
      ],
    },
    {
      name: 'an antenna 152 mm below the top of the glass, outside the swept area',
      change: onGlass({ belowGlassTopMillimetres: 152, inSweptArea: false }),
      facts: { profile: { ...exampleProfile, vehicleSafetyTechnology: false } },
      finds: [],
    },
    {
      name: 'an antenna 153 mm below the top of the glass',
      change: onGlass({ belowGlassTopMillimetres: 153, inSweptArea: false }),
      facts: { profile: { ...exampleProfile, vehicleSafetyTechnology: false } },
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'The device reaches 153 mm below the upper edge of the windscreen; 152 mm at most.',
          whatToDo: 'Move it up, or off the windscreen.',
        },
      ],
    },
    {
      name: 'a private car: the local code',
      change: (job) => {
        const placed = onGlass({ belowSweptTopMillimetres: 100 })(job);
        return { ...placed, vehicle: { ...placed.vehicle, class: 'car' } };
      },
      finds: [
        {
          at: 'windscreen',
          severity: 'advise',
          what: 'The device is on the windscreen; what may stand there is for the local code to say.',
          whatToDo: 'Look up the local code, or move the device off the windscreen.',
        },
      ],
    },
    {
      name: 'not measured at all',
      change: onGlass({}),
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'The place of the device within the area swept by the wipers is not measured.',
          whatToDo:
            'Measure from its lower edge up to the top of the swept area (at most 216 mm), or from its upper edge down to the bottom (at most 175 mm).',
        },
      ],
    },
    {
      name: '176 mm above the lower edge',
      change: onGlass({ aboveSweptBottomMillimetres: 176 }),
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'The device reaches 176 mm above the lower edge of the swept area (at most 175 mm).',
          whatToDo: 'Move it up or down until one of the two limits holds, or off the windscreen.',
        },
      ],
    },
    {
      name: 'too far from both edges',
      change: onGlass({ belowSweptTopMillimetres: 217, aboveSweptBottomMillimetres: 176 }),
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'The device reaches 217 mm below the upper edge of the swept area (at most 216 mm) and 176 mm above its lower edge (at most 175 mm).',
          whatToDo: 'Move it up or down until one of the two limits holds, or off the windscreen.',
        },
      ],
    },
    {
      name: 'an antenna in the swept area, not measured from the top of the glass',
      change: onGlass({ belowGlassTopMillimetres: undefined, inSweptArea: true }),
      facts: { profile: { ...exampleProfile, vehicleSafetyTechnology: false } },
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'The distance of the device from the top of the glass is not measured.',
          whatToDo: 'Measure from its lower edge up to the upper edge of the windscreen: at most 152 mm.',
        },
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'The device is within the area swept by the wipers, where no antenna may stand.',
          whatToDo: 'Move it out of the swept area, and record that it is outside.',
        },
      ],
    },
    {
      name: 'an antenna of which nobody wrote whether the wipers pass over it',
      change: onGlass({ belowGlassTopMillimetres: 100, inSweptArea: undefined }),
      facts: { profile: { ...exampleProfile, vehicleSafetyTechnology: false } },
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'Whether the wipers pass over the device is not recorded.',
          whatToDo: 'Move it out of the swept area, and record that it is outside.',
        },
      ],
    },
    {
      name: 'in Great Britain: the local code, with what its manual says',
      change: onGlass({ belowSweptTopMillimetres: 100 }),
      facts: { book: bookIn('GB') },
      finds: [
        {
          at: 'windscreen',
          severity: 'advise',
          what: 'The device is on the windscreen; what may stand there is for the local code to say.',
          whatToDo:
            'Look up the local code. Great Britain, MOT inspection manual section 3: in front of the driver (290 mm wide; 350 mm above 3.5 t) at most 10 mm may reach into the swept area, elsewhere in it 40 mm.',
        },
      ],
    },
  ],
});
