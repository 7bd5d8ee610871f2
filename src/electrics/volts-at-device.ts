import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Reading } from '../records/reading.ts';
import { type KeyPosition, keyPositions } from '../records/wire-role.ts';

/** What the device sees in one key position, millivolts. */
export type AtDevice = {
  readonly key: KeyPosition;
  /** from the lowest reading there */
  readonly millivolts: number;
  /** from the highest reading there */
  readonly millivoltsMax: number;
};

/**
 * Volts at the device in each key position that was read on its supply wire: the reading less the drop of its leads.
 * Readings against anything but chassis or battery negative are left out. The highest is not reduced by the drop,
 * because a device asleep draws next to nothing.
 * @param readings of the wire that the supply lead is joined to
 * @param dropMillivolts lost over supply and return lead with the device awake
 */
export function voltsAtDevice(readings: readonly Reading[], dropMillivolts: number): readonly AtDevice[] {
  const direct = readings.filter((each) => each.reference === 'chassis' || each.reference === 'battery negative');
  return keyPositions.flatMap((key): readonly AtDevice[] => {
    const read = direct.filter((each) => each.key === key).map((each) => millivoltsFromVolts(each.volts));
    if (read.length === 0) return [];
    return [{ key, millivolts: Math.min(...read) - dropMillivolts, millivoltsMax: Math.max(...read) }];
  });
}
