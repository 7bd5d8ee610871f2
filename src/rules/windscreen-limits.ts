import type { Book } from '../records/book.ts';
import type { Placement } from '../records/placement.ts';
import type { Vehicle } from '../records/vehicle.ts';
import type { Hit } from './rule-words.ts';

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

const moveIt = 'Move it up or down until one of the two limits holds, or off the windscreen.';

/** What is wrong with a place on the windscreen. */
export const windscreenWords = {
  'not measured in the swept area': (limits: { below: number; above: number }) => ({
    what: 'The place of the device within the area swept by the wipers is not measured.',
    whatToDo: `Measure from its lower edge up to the top of the swept area (at most ${limits.below} mm), or from its upper edge down to the bottom (at most ${limits.above} mm).`,
  }),
  'too far below the top': (place: { below: number; belowMost: number }) => ({
    what: `The device reaches ${place.below} mm below the upper edge of the swept area (at most ${place.belowMost} mm).`,
    whatToDo: moveIt,
  }),
  'too far above the bottom': (place: { above: number; aboveMost: number }) => ({
    what: `The device reaches ${place.above} mm above the lower edge of the swept area (at most ${place.aboveMost} mm).`,
    whatToDo: moveIt,
  }),
  'too far from both': (place: { below: number; belowMost: number; above: number; aboveMost: number }) => ({
    what: `The device reaches ${place.below} mm below the upper edge of the swept area (at most ${place.belowMost} mm) and ${place.above} mm above its lower edge (at most ${place.aboveMost} mm).`,
    whatToDo: moveIt,
  }),
  'not measured from the glass': (limits: { below: number }) => ({
    what: 'The distance of the device from the top of the glass is not measured.',
    whatToDo: `Measure from its lower edge up to the upper edge of the windscreen: at most ${limits.below} mm.`,
  }),
  'too far below the glass top': (place: { below: number; belowMost: number }) => ({
    what: `The device reaches ${place.below} mm below the upper edge of the windscreen; ${place.belowMost} mm at most.`,
    whatToDo: 'Move it up, or off the windscreen.',
  }),
  'in the swept area': () => ({
    what: 'The device is within the area swept by the wipers, where no antenna may stand.',
    whatToDo: 'Move it out of the swept area, and record that it is outside.',
  }),
  'swept area not recorded': () => ({
    what: 'Whether the wipers pass over the device is not recorded.',
    whatToDo: 'Move it out of the swept area, and record that it is outside.',
  }),
};

const at = 'windscreen';

type WindscreenHit = Hit<{ summary: () => string; why: string; says: typeof windscreenWords }>;

/** 49 CFR 393.60(e)(1)(ii): vehicle safety technology within the swept area, near its upper or its lower edge. */
export function sweptAreaHits(placement: Placement, day: string): readonly WindscreenHit[] {
  const belowMost = belowSweptTop.findLast((each) => each.from <= day)?.millimetresMax ?? 0;
  const aboveMost = aboveSweptBottomMillimetresMax;
  const below = placement.belowSweptTopMillimetres;
  const above = placement.aboveSweptBottomMillimetres;
  if (below !== undefined && below <= belowMost) return [];
  if (above !== undefined && above <= aboveMost) return [];
  if (below !== undefined && above !== undefined)
    return [{ at, says: 'too far from both', figures: { below, belowMost, above, aboveMost } }];
  if (below !== undefined) return [{ at, says: 'too far below the top', figures: { below, belowMost } }];
  if (above !== undefined) return [{ at, says: 'too far above the bottom', figures: { above, aboveMost } }];
  return [{ at, says: 'not measured in the swept area', figures: { below: belowMost, above: aboveMost } }];
}

/** 49 CFR 393.60(e)(1)(i): an antenna or the like, near the top of the glass and outside the swept area. */
export function antennaHits(placement: Placement): readonly WindscreenHit[] {
  const below = placement.belowGlassTopMillimetres;
  const belowMost = belowGlassTopMillimetresMax;
  const hits: WindscreenHit[] = [];
  if (below === undefined) hits.push({ at, says: 'not measured from the glass', figures: { below: belowMost } });
  else if (below > belowMost) hits.push({ at, says: 'too far below the glass top', figures: { below, belowMost } });
  if (placement.inSweptArea !== false)
    hits.push({ at, says: placement.inSweptArea === true ? 'in the swept area' : 'swept area not recorded' });
  return hits;
}
