import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { LevelGroup } from './levels-at.ts';
import type { Surroundings } from './surroundings.ts';

/** What a tap between two batteries or a converter from 24 V to 12 V shows, rest to charging (common practice, no source). */
const tapMillivolts = [11_000, 15_000] as const;

/**
 * Whether a reading in a 24 V vehicle is that of a 12 V tap: between the batteries, or from a converter.
 * @param millivolts the reading
 * @param system nominal volts
 */
export const isTapVolts = (millivolts: number, system: 12 | 24): boolean =>
  system === 24 && millivolts >= tapMillivolts[0] && millivolts <= tapMillivolts[1];

/**
 * Whether a group of steady readings in a 24 V vehicle is that of a 12 V tap.
 * @param group readings taken in the same way
 * @param around what else is known of the job
 */
export const isTap = (group: LevelGroup, around: Surroundings): boolean =>
  group.key !== 'crank' &&
  group.lights === 'off' &&
  group.counted.every(({ reading }) => reading.steady && isTapVolts(millivoltsFromVolts(reading.volts), around.system));
