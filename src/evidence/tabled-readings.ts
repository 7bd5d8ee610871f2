import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { type KeyPosition, keyPositions } from '../records/wire-role.ts';
import type { Conclusion, TabledReadings } from './evidence.ts';
import { isKeyOut, reversed } from './surroundings.ts';

const isPlain = (reading: Reading): boolean =>
  reading.taken === 'before' &&
  !reading.loaded &&
  !reversed(reading) &&
  reading.lights !== 'on' &&
  reading.isolator !== 'open';

/**
 * The readings of a wire as a table shows them: in each key position the one that counts, those that it supersedes, and all others.
 * @param point the wire
 * @param conclusion what its readings prove
 */
export function tabledReadings(point: ProbePoint, conclusion: Conclusion): TabledReadings {
  const because = new Set(conclusion.kind === 'concluded' ? conclusion.because : []);
  const waited = (reading: Reading) => reading.secondsWaited ?? 0;
  const countsAt = (key: KeyPosition): Reading | undefined => {
    const plain = point.readings.filter((reading) => isPlain(reading) && reading.key === key);
    const longest = plain.toSorted((one, other) => waited(other) - waited(one))[0];
    if (isKeyOut(key) && longest !== undefined) return longest;
    const alike =
      plain.length > 0
        ? plain
        : point.readings.filter((each) => each.taken === 'before' && reversed(each) && each.key === key);
    return alike.find((reading) => because.has(reading)) ?? alike[0];
  };
  const counts = new Map<KeyPosition, Reading>();
  for (const key of keyPositions) {
    const reading = countsAt(key);
    if (reading !== undefined) counts.set(key, reading);
  }
  const others = point.readings.filter((reading) => !reading.loaded && counts.get(reading.key) !== reading);
  const isSuperseded = (reading: Reading) => isPlain(reading) && isKeyOut(reading.key);
  return {
    counts,
    superseded: others.filter(isSuperseded),
    besides: others.filter((reading) => !isSuperseded(reading)),
  };
}
