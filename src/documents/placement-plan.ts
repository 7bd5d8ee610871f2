import type { Zone } from '../records/placement.ts';

/** Where each zone lies on the plan, on a plan of 40 by 66; front is up. */
const places: Readonly<Record<Zone, readonly [number, number]>> = {
  windscreen: [20, 15],
  'dash left': [12, 21],
  'dash centre': [20, 21],
  'dash right': [28, 21],
  'under dash left': [12, 25],
  'under dash right': [28, 25],
  'centre console': [20, 30],
  overhead: [20, 34],
  'A-pillar left': [7, 18],
  'A-pillar right': [33, 18],
  'under seat left': [12, 33],
  'under seat right': [28, 33],
  'rear of cab': [20, 40],
  'load area': [20, 54],
  'engine bay': [20, 7],
  'battery box': [8, 46],
  chassis: [20, 60],
  roof: [20, 37],
  'machine cab': [20, 29],
};

/** The place of a zone on the plan as text coordinates. */
export function placementPlan(zone: Zone): { readonly x: string; readonly y: string } {
  const [x, y] = places[zone];
  // the figure draws the plan at this scale, in millimetres
  const scale = 0.575;
  return { x: (x * scale).toFixed(1), y: (y * scale).toFixed(1) };
}
