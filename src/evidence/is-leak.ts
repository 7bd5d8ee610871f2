import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Reading } from '../records/reading.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import { isOnly, type LevelGroup } from './levels-at.ts';
import { isKeyOut, type Surroundings } from './surroundings.ts';

const feeds: ReadonlySet<KeyPosition> = new Set(['on', 'crank', 'running']);
/** What dampness or a diode leaks into a meter of ten megohms, 12 V (common practice, no source). */
const leakMillivoltsMax = 2000;

/**
 * Whether a reading is no more than a leak or a fading charge shows.
 * @param reading the reading
 * @param around what else is known of the job
 */
export const isLeakVolts = (reading: Reading, around: Surroundings): boolean =>
  reading.steady && millivoltsFromVolts(reading.volts) <= (leakMillivoltsMax * around.system) / 12;

/** Whether a wire carries the supply in a position in which the switch feeds it. */
const isFed = (groups: readonly LevelGroup[]): boolean =>
  groups.some((each) => feeds.has(each.key) && isOnly(each.levels, 'supply'));

/** Whether the load took a leak's volts away, so that the wire reads nothing there. */
export const vanishes = (leak: LevelGroup, groups: readonly LevelGroup[]): boolean =>
  groups.some((each) => each.key === leak.key && each.loaded && isOnly(each.levels, 'zero'));

/**
 * Whether the odd volts of a group may be a leak: steady, small, read with nothing drawing on the wire, on a wire that is fed elsewhere.
 * @param group readings taken in the same way
 * @param groups all groups of the wire
 * @param around what else is known of the job
 */
export function isLeak(group: LevelGroup, groups: readonly LevelGroup[], around: Surroundings): boolean {
  // with the key on small volts are no leak of a feed: a lamp's or a charge line's own
  const isOff = isKeyOut(group.key) || group.key === 'accessory';
  if (group.loaded || !isOff || !group.levels.includes('between')) return false;
  return (
    isFed(groups) &&
    isOnly(group.levels, 'between', 'zero') &&
    group.counted.every(({ reading }) => isLeakVolts(reading, around))
  );
}
