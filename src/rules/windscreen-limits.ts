import type { Book } from '../records/book.ts';
import type { Placement } from '../records/placement.ts';
import type { Vehicle } from '../records/vehicle.ts';
import type { RuleHit } from './rule.ts';

/** A vehicle of this weight or more is a commercial motor vehicle, kilograms. Source: 49 CFR 390.5 (4536 kg, 10,001 lb; from memory). */
const commercialKilogramsMin = 4536;

/** Vehicle safety technology: largest distance of its lower edge below the upper edge of the swept area, by day. */
const belowSweptTop = [
  // 49 CFR 393.60(e)(1)(ii)(A) before 87 FR 12596: 4 in
  { from: '0000-00-00', millimetresMax: 100 },
  // 87 FR 12596 of 7 March 2022: 8.5 in
  { from: '2022-05-06', millimetresMax: 216 },
] as const;
/** 49 CFR 393.60(e)(1)(ii)(B): 7 in. */
const aboveSweptBottomMillimetresMax = 175;
/** 49 CFR 393.60(e)(1)(i), antennas and similar devices: 6 in. */
const belowGlassTopMillimetresMax = 152;

/**
 * Whether 49 CFR 393.60(e) applies: a commercial vehicle of 4536 kg or more in the United States. Where the weight is not
 * recorded, cars, trailers and plant are taken for exempt, all others for regulated.
 */
export function isRegulated(vehicle: Vehicle, book: Book): boolean {
  if (book.business.address.country !== 'US' || !vehicle.commercial) return false;
  if (vehicle.class === 'trailer' || vehicle.class === 'plant') return false;
  if (vehicle.class === 'bus') return true;
  if (vehicle.grossWeightKilograms !== undefined) return vehicle.grossWeightKilograms >= commercialKilogramsMin;
  return vehicle.class !== 'car';
}

/** 49 CFR 393.60(e)(1)(ii): vehicle safety technology within the swept area, near its upper or its lower edge. */
export function sweptAreaHits(placement: Placement, day: string): readonly RuleHit[] {
  const topMax = belowSweptTop.findLast((each) => each.from <= day)?.millimetresMax ?? 0;
  const below = placement.belowSweptTopMillimetres;
  const above = placement.aboveSweptBottomMillimetres;
  if (below === undefined && above === undefined) {
    return [
      {
        at: 'windscreen',
        what: 'The place of the device within the area swept by the wipers is not measured.',
        whatToDo: `Measure from its lower edge up to the top of the swept area (at most ${topMax} mm), or from its upper edge down to the bottom (at most ${aboveSweptBottomMillimetresMax} mm).`,
      },
    ];
  }
  if (below !== undefined && below <= topMax) return [];
  if (above !== undefined && above <= aboveSweptBottomMillimetresMax) return [];
  const measured = [
    below === undefined ? '' : `${below} mm below the upper edge of the swept area (at most ${topMax} mm)`,
    above === undefined ? '' : `${above} mm above its lower edge (at most ${aboveSweptBottomMillimetresMax} mm)`,
  ].filter((text) => text !== '');
  return [
    {
      at: 'windscreen',
      what: `The device reaches ${measured.join(' and ')}.`,
      whatToDo: 'Move it up or down until one of the two limits holds, or off the windscreen.',
    },
  ];
}

/** 49 CFR 393.60(e)(1)(i): an antenna or the like, near the top of the glass and outside the swept area. */
export function antennaHits(placement: Placement): readonly RuleHit[] {
  const below = placement.belowGlassTopMillimetres;
  const hits: RuleHit[] = [];
  if (below === undefined)
    hits.push({
      at: 'windscreen',
      what: 'The distance of the device from the top of the glass is not measured.',
      whatToDo: `Measure from its lower edge up to the upper edge of the windscreen: at most ${belowGlassTopMillimetresMax} mm.`,
    });
  else if (below > belowGlassTopMillimetresMax)
    hits.push({
      at: 'windscreen',
      what: `The device reaches ${below} mm below the upper edge of the windscreen; ${belowGlassTopMillimetresMax} mm at most.`,
      whatToDo: 'Move it up, or off the windscreen.',
    });
  if (placement.inSweptArea !== false)
    hits.push({
      at: 'windscreen',
      what:
        placement.inSweptArea === true
          ? 'The device is within the area swept by the wipers, where no antenna may stand.'
          : 'Whether the wipers pass over the device is not recorded.',
      whatToDo: 'Move it out of the swept area, and record that it is outside.',
    });
  return hits;
}

/** What to look up where no regulation of the United States applies. */
export function localNote(country: string): string {
  return country === 'GB'
    ? 'Look up the local code. Great Britain, MOT inspection manual section 3: in front of the driver (290 mm wide; 350 mm above 3.5 t) at most 10 mm may reach into the swept area, elsewhere in it 40 mm.'
    : 'Look up the local code, or move the device off the windscreen.';
}
