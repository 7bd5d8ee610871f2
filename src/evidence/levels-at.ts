import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import { type MeasuredLevel, measuredLevels } from './supply-level.ts';
import { isKeyOut, reversed, type Surroundings } from './surroundings.ts';

/** A reading with the levels it may stand at. */
export type Levelled = {
  readonly reading: Reading;
  readonly levels: readonly MeasuredLevel[];
  /** why it proves nothing about the role, or null when it counts */
  readonly void: 'retained power' | 'wrong reference' | 'isolator' | null;
};

/** Readings taken in the same way: only the key position, the lamps and the load decide what a wire should read. */
export type LevelGroup = {
  readonly key: KeyPosition;
  readonly lights: 'on' | 'off';
  readonly loaded: boolean;
  readonly counted: readonly Levelled[];
  readonly levels: readonly MeasuredLevel[];
};

/** The levels a reading may stand at: one, or neighbours when the meter cannot tell. */
export function levelsOf(reading: Reading, around: Surroundings): readonly MeasuredLevel[] {
  const millivolts = millivoltsFromVolts(reading.volts);
  return measuredLevels(millivolts, around.rangeAt(reading.key), around.system, around.meterOf(reading));
}

/** True when a reading stands at one level and no other is possible. */
export const isOnly = (levels: readonly MeasuredLevel[], ...wanted: readonly MeasuredLevel[]) =>
  levels.length > 0 && levels.every((level) => wanted.includes(level));

/** The readings of a wire against ground before anything was connected, each with its level. */
export function levelled(point: ProbePoint, around: Surroundings): readonly Levelled[] {
  return point.readings
    .filter((reading) => !reversed(reading) && reading.taken === 'before')
    .map((reading, _, all) => {
      const levels = levelsOf(reading, around);
      return { reading, levels, void: voidBecause(reading, levels, all, point, around) };
    });
}

function voidBecause(
  reading: Reading,
  levels: readonly MeasuredLevel[],
  all: readonly Reading[],
  point: ProbePoint,
  around: Surroundings,
): Levelled['void'] {
  if (reading.isolator === 'open') return 'isolator';
  // a reading with the isolator known to be closed takes the place of one that does not say
  const again = all.some((each) => each.key === reading.key && each.isolator === 'closed');
  if (again && mayBeCutOff(reading, point, around)) return 'isolator';
  if (isOnly(levels, 'negative')) return 'wrong reference';
  if (!isKeyOut(reading.key)) return null;
  const settled = levels.includes('zero') || (reading.secondsWaited ?? 0) >= around.retainedPowerSeconds;
  return settled || followsLamps(reading, all, around) ? null : 'retained power';
}

/** What was dead before the lamps were switched on is not kept alive: the lamps feed it. */
function followsLamps(lit: Reading, all: readonly Reading[], around: Surroundings): boolean {
  return (
    lit.lights === 'on' &&
    all.some(
      (dark) =>
        dark.key === lit.key &&
        dark.lights !== 'on' &&
        (dark.secondsWaited ?? 0) <= (lit.secondsWaited ?? 0) &&
        isOnly(levelsOf(dark, around), 'zero'),
    )
  );
}

/** With the key out power goes away by and by: of readings taken in the same way the longest wait decides; power that comes back is no such thing. */
export function isSuperseded(each: Levelled, readings: readonly Levelled[]): boolean {
  const { key, lights, loaded, isolator } = each.reading;
  if (!isKeyOut(key)) return false;
  return readings.some(
    (other) =>
      other.void === null &&
      other.reading.key === key &&
      (other.reading.lights ?? 'off') === (lights ?? 'off') &&
      other.reading.loaded === loaded &&
      (other.reading.isolator ?? 'closed') === (isolator ?? 'closed') &&
      (other.reading.secondsWaited ?? 0) > (each.reading.secondsWaited ?? 0) &&
      !(isOnly(each.levels, 'zero') && !other.levels.includes('zero')),
  );
}

/** The readings that count, grouped by how they were taken. */
export function levelGroups(readings: readonly Levelled[]): readonly LevelGroup[] {
  const groups = new Map<string, Levelled[]>();
  for (const each of readings.filter((one) => one.void === null && !isSuperseded(one, readings))) {
    const { key, lights, loaded } = each.reading;
    const name = `${key} ${lights ?? 'off'} ${loaded}`;
    groups.set(name, [...(groups.get(name) ?? []), each]);
  }
  return [...groups.values()].map((counted) => ({
    key: counted[0]?.reading.key ?? 'out',
    lights: counted[0]?.reading.lights ?? 'off',
    loaded: counted[0]?.reading.loaded ?? false,
    counted,
    levels: agreedLevels(counted.map((each) => each.levels)),
  }));
}

/** What several readings of the same thing show together: what each allows and most show surely, else all that any of them allows; one that says otherwise is never outvoted. */
export function agreedLevels(readings: readonly (readonly MeasuredLevel[])[]): readonly MeasuredLevel[] {
  const all = [...new Set(readings.flat())];
  const most = all
    .filter((level) => readings.every((each) => each.includes(level)))
    .find((level) => readings.filter((each) => isOnly(each, level)).length * 2 > readings.length);
  return most === undefined ? all : [most];
}

/** Whether readings taken in the same way cannot all be right: no level is possible for all, beyond a feed that is sometimes a little low. */
export function contradicts(group: LevelGroup): boolean {
  const definite = group.counted.map((each) => each.levels);
  const all = [...new Set(definite.flat())];
  const possible = (level: MeasuredLevel) => definite.every((each) => each.includes(level));
  if (all.some(possible)) return false;
  return !definite.every((each) => each.some((level) => level === 'low' || level === 'supply' || level === 'above'));
}

/** True where an isolator that may have stood open explains why a wire of its switched side reads nothing with the key out. */
export function mayBeCutOff(reading: Reading, point: ProbePoint, around: Surroundings): boolean {
  return (
    around.hasIsolator &&
    point.isolatorSide === 'switched' &&
    isKeyOut(reading.key) &&
    reading.isolator !== 'closed' &&
    isOnly(levelsOf(reading, around), 'zero')
  );
}
