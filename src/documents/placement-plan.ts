import type { Placement, Zone } from '../records/placement.ts';
import type { Vehicle } from '../records/vehicle.ts';
import type { Writing } from '../words/writing.ts';

type Box = readonly [x: number, y: number, width: number, height: number];
type Outline = {
  /** drawn boxes, front at the top, in millimetres */
  readonly boxes: readonly Box[];
  readonly lines: readonly (readonly [x1: number, y1: number, x2: number, y2: number])[];
  readonly cab: Box | null;
  readonly seats: boolean;
  /** zones outside the cab; a zone that lies elsewhere on each make is left out, and then no plan is drawn */
  readonly zones: Readonly<Partial<Record<Zone, Box>>>;
};

/** Zones inside a cab, in shares of its width and length. */
const cabZones: Readonly<Partial<Record<Zone, Box>>> = {
  windscreen: [0.08, 0.01, 0.84, 0.1],
  'dash left': [0.03, 0.14, 0.3, 0.14],
  'dash centre': [0.35, 0.14, 0.3, 0.14],
  'dash right': [0.67, 0.14, 0.3, 0.14],
  'under dash left': [0.03, 0.29, 0.42, 0.12],
  'under dash right': [0.55, 0.29, 0.42, 0.12],
  'centre console': [0.43, 0.44, 0.14, 0.36],
  overhead: [0.15, 0.29, 0.7, 0.12],
  'A-pillar left': [0, 0.02, 0.1, 0.2],
  'A-pillar right': [0.9, 0.02, 0.1, 0.2],
  'under seat left': [0.08, 0.46, 0.3, 0.32],
  'under seat right': [0.62, 0.46, 0.3, 0.32],
  'rear of cab': [0.03, 0.84, 0.94, 0.14],
  roof: [0.05, 0.12, 0.9, 0.84],
  'machine cab': [0.05, 0.12, 0.9, 0.84],
};

const body: Box = [5, 0, 22, 46];
const outlines: Readonly<Record<NonNullable<Vehicle['class']>, Outline>> = {
  car: {
    boxes: [body],
    lines: [
      [5, 11, 27, 11],
      [7, 39, 25, 39],
    ],
    cab: [6, 11, 20, 20],
    seats: true,
    zones: { 'engine bay': [7, 1.5, 18, 8], 'load area': [7, 39.5, 18, 6], chassis: body },
  },
  van: {
    boxes: [body],
    lines: [
      [5, 8, 27, 8],
      [5, 27.5, 27, 27.5],
    ],
    cab: [6, 8, 20, 19],
    seats: true,
    zones: { 'engine bay': [7, 1, 18, 6], 'load area': [7, 29.5, 18, 15], chassis: body },
  },
  'light truck': {
    boxes: [
      [6, 0, 20, 25],
      [5, 26.5, 22, 19.5],
    ],
    lines: [[6, 7, 26, 7]],
    cab: [6.5, 7, 19, 17.5],
    seats: true,
    zones: { 'engine bay': [8, 1, 16, 5], 'load area': [7, 28, 18, 16.5], chassis: [10, 25, 12, 21] },
  },
  'heavy truck': {
    boxes: [
      [6, 0, 20, 17.5],
      [5, 20, 22, 26],
      [11, 17.5, 10, 2.5],
    ],
    lines: [],
    cab: [6.5, 0, 19, 17],
    seats: true,
    zones: { 'load area': [7, 22, 18, 22], chassis: [11, 17.5, 10, 28.5] },
  },
  bus: { boxes: [body], lines: [], cab: [6, 0.5, 20, 17], seats: true, zones: { chassis: body } },
  trailer: {
    boxes: [[5, 9, 22, 37]],
    lines: [
      [16, 0.5, 9, 9],
      [16, 0.5, 23, 9],
    ],
    cab: null,
    seats: false,
    zones: { 'load area': [7, 11, 18, 33], chassis: [9, 10, 14, 35] },
  },
  plant: {
    boxes: [
      [9, 4, 14, 40],
      [4, 6, 4, 12],
      [24, 6, 4, 12],
      [4, 30, 4, 12],
      [24, 30, 4, 12],
      [10, 15, 12, 15],
    ],
    lines: [],
    cab: [10, 15, 12, 15],
    seats: false,
    zones: { chassis: [9, 4, 14, 40] },
  },
};

/** Zones too large for one point: they are shaded, without the point. */
const wide: readonly Zone[] = ['chassis', 'roof', 'load area', 'machine cab'];
/** The outlines are measured in a frame of 32 by 46; on paper they are drawn smaller. */
const scale = 0.8;
const top = 4;
const left = 4.2;
const long = (value: number) => (value * scale).toFixed(1);
const across = (value: number) => (value * scale + left).toFixed(1);
const down = (value: number) => (value * scale + top).toFixed(1);

function inCab(cab: Box | null, zone: Zone): Box | undefined {
  const share = cabZones[zone];
  if (cab === null || share === undefined) return undefined;
  return [cab[0] + share[0] * cab[2], cab[1] + share[1] * cab[3], share[2] * cab[2], share[3] * cab[3]];
}

function drawn([x, y, width, height]: Box) {
  return { x: across(x), y: down(y), width: long(width), height: long(height) };
}

function seatsOf(outline: Outline): readonly Box[] {
  if (!outline.seats) return [];
  return (['under seat left', 'under seat right'] as const)
    .map((zone) => inCab(outline.cab, zone))
    .filter((seat) => seat !== undefined);
}

/**
 * A plan of the vehicle seen from above with the zone of the device marked; not drawn for a vehicle of unknown class
 * or a zone that a plain plan cannot show.
 * @param placement where the device sits
 * @param vehicle its class chooses the plan
 * @param writing the document's words
 */
export function placementPlan(placement: Placement | undefined, vehicle: Vehicle, writing: Writing) {
  const outline = vehicle.class === undefined ? undefined : outlines[vehicle.class];
  const area =
    placement === undefined || outline === undefined
      ? undefined
      : (outline.zones[placement.zone] ?? inCab(outline.cab, placement.zone));
  if (placement === undefined || outline === undefined || area === undefined)
    return { isDrawn: false, alternative: '', boxes: [], lines: [], areas: [], points: [], name: '' };
  const name = writing.terms.zones[placement.zone][0];
  return {
    isDrawn: true,
    alternative: writing.sentences.planAlternative(name),
    name,
    boxes: [...outline.boxes, ...seatsOf(outline)].map(drawn),
    lines: outline.lines.map(([x1, y1, x2, y2]) => ({
      x1: across(x1),
      y1: down(y1),
      x2: across(x2),
      y2: down(y2),
    })),
    areas: [drawn(area)],
    points: wide.includes(placement.zone) ? [] : [{ x: across(area[0] + area[2] / 2), y: down(area[1] + area[3] / 2) }],
  };
}
