import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import { fortyEightVoltsMillivolts, overVoltageMillivolts } from './electrical-limits.ts';
import type { Conclusion, Trap } from './evidence.ts';
import { feedsAreLive, isGroundDrop, reversedLevels } from './ground-test.ts';
import { isLeak } from './is-leak.ts';
import { isTapVolts } from './is-tap.ts';
import { contradicts, isOnly, type Levelled, levelGroups, levelled, mayBeCutOff } from './levels-at.ts';
import { fallsUnderLoad, isGhost } from './load-comparison.ts';
import { referenceTraps } from './reference-traps.ts';
import type { Found, Seen } from './seen-wire.ts';
import { isKeyOut, reversed, type Surroundings } from './surroundings.ts';
import { keptPower } from './test-roles.ts';

/** What a fitter must mind in the readings of one wire, each thing once. */
export function trapsOfWire(point: ProbePoint, conclusion: Conclusion, around: Surroundings): readonly Trap[] {
  if (around.nothingFollows) return [];
  const readings = levelled(point, around);
  const seen: Seen = { point, readings, groups: levelGroups(readings), conclusion, around };
  const found = [
    fortyEight,
    leaking,
    keptAlive,
    low,
    dropsInCrank,
    underLoad,
    odd,
    half,
    referenceTraps,
    isolator,
    tooHigh,
    wandering,
  ];
  return [...found, disagreeing, throughLoad]
    .flatMap((look) => look(seen))
    .map((facts) => ({ ...facts, point: point.name }));
}

function keptAlive({ readings, around }: Seen): Found {
  const longest = keptPower(readings, around).toSorted(
    (one, other) => (other.secondsWaited ?? 0) - (one.secondsWaited ?? 0),
  )[0];
  if (longest !== undefined) return [{ kind: 'delayed power', reading: longest }];
  // a later reading that counts has answered the question
  const early = readings.filter((each) => each.void === 'retained power' && !answered(each, readings));
  const last = early.toSorted((one, other) => (other.reading.secondsWaited ?? 0) - (one.reading.secondsWaited ?? 0))[0];
  return last === undefined
    ? []
    : [{ kind: 'retained power', reading: last.reading, neededSeconds: around.retainedPowerSeconds }];
}

const answered = (early: Levelled, readings: readonly Levelled[]) =>
  readings.some(
    (each) =>
      each.void === null &&
      each.reading.key === early.reading.key &&
      (each.reading.secondsWaited ?? 0) >= (early.reading.secondsWaited ?? 0),
  );

function fortyEight({ readings }: Seen): Found {
  const reading = readings.find(
    (each) => Math.abs(millivoltsFromVolts(each.reading.volts)) > fortyEightVoltsMillivolts,
  )?.reading;
  return reading === undefined ? [] : [{ kind: 'forty-eight volts', reading }];
}

function leaking({ groups, around }: Seen): Found {
  const loaded = (key: string) => groups.some((group) => group.key === key && group.loaded);
  const reading = groups.find((group) => isLeak(group, groups, around) && !loaded(group.key))?.counted[0]?.reading;
  return reading !== undefined ? [{ kind: 'leak', reading }] : [];
}

function low({ readings, around }: Seen): Found {
  const behind = readings.filter((each) => {
    const supply = around.supply[each.reading.key];
    if (each.void !== null || each.reading.loaded || each.reading.key === 'crank') return false;
    const range = around.rangeAt(each.reading.key);
    if (isOnly(each.levels, 'low')) return true;
    if (!range.measured || supply === undefined || !isOnly(each.levels, 'low', 'supply')) return false;
    // a few tenths, beyond what the meter may be off twice
    const least = Math.min(...supply.from.map((one) => millivoltsFromVolts(one.volts)));
    const lost = least - millivoltsFromVolts(each.reading.volts);
    return lost > (250 * around.system) / 12 + range.unsure;
  });
  const most = behind[0]?.reading;
  if (most === undefined) return [];
  return [{ kind: 'reads low', reading: most, supplyMillivolts: around.supply[most.key]?.millivolts ?? null }];
}

function dropsInCrank({ groups, conclusion, around }: Seen): Found {
  const isLamp = conclusion.kind === 'concluded' && conclusion.role === 'lighting';
  if (!around.cranks || isLamp) return [];
  const falls = groups.some(
    (group) =>
      group.key === 'crank' &&
      isOnly(group.levels, 'zero') &&
      groups.some((each) => each.lights === group.lights && isOnly(each.levels, 'supply')),
  );
  return falls ? [{ kind: 'drops in crank' }] : [];
}

function underLoad({ point, around }: Seen): Found {
  const pair = fallsUnderLoad(point, around)[0];
  return pair === undefined ? [] : [{ kind: 'signal only', unloaded: pair.unloaded, loaded: pair.loaded }];
}

function odd(seen: Seen): Found {
  const { point, groups } = seen;
  const group = groups
    .filter((each) => !isLeak(each, groups, seen.around))
    .find((each) => !isKeyOut(each.key) && !each.loaded && isOnly(each.levels, 'between'));
  const reading = group?.counted[0]?.reading;
  if (isGhost(seen.readings)) {
    if (halfReading(seen) === undefined) return [{ kind: 'ghost volts', reading: reading ?? null }];
  } else if (reading !== undefined && halfReading(seen) === undefined)
    return [{ kind: 'average of a signal', reading, twisted: point.twisted }];
  return point.twisted ? [{ kind: 'average of a signal', reading: null, twisted: true }] : [];
}

function halfReading({ readings, around }: Seen) {
  return readings.find((each) => {
    const isPlain = each.reading.steady && each.reading.key !== 'crank' && isOnly(each.levels, 'between');
    return isPlain && isTapVolts(millivoltsFromVolts(each.reading.volts), around.system);
  })?.reading;
}

function half(seen: Seen): Found {
  const reading = halfReading(seen);
  return reading === undefined ? [] : [{ kind: 'half the supply', reading }];
}

function isolator({ point, readings, conclusion, around }: Seen): Found {
  const kind = 'isolator side';
  const open = readings.filter((each) => each.reading.isolator === 'open');
  const dead = open.find((each) => isOnly(each.levels, 'zero'));
  if (dead !== undefined) return [{ kind, how: 'dead with it open', reading: dead.reading }];
  const couldBeConstant = conclusion.kind === 'open' && conclusion.remaining.includes('constant');
  if (couldBeConstant && readings.some((each) => mayBeCutOff(each.reading, point, around)))
    return [{ kind, how: 'dead proves nothing', reading: null }];
  if (!around.hasIsolator || open.length > 0) return [];
  const live = readings.some((each) => each.reading.key === 'out' && isOnly(each.levels, 'supply'));
  if (!live || point.isolatorSide === 'battery') return [];
  const how = point.isolatorSide === 'switched' ? 'goes dead with it' : 'read it open';
  return [{ kind, how, reading: null }];
}

function tooHigh({ readings, around }: Seen): Found {
  const limit = overVoltageMillivolts[around.system];
  if (Object.values(around.supply).some((each) => each.millivolts > limit)) return [];
  const reading = readings.find(
    (each) =>
      each.void === null &&
      each.reading.key === 'running' &&
      millivoltsFromVolts(each.reading.volts) > limit &&
      millivoltsFromVolts(each.reading.volts) <= fortyEightVoltsMillivolts,
  )?.reading;
  return reading === undefined
    ? []
    : [{ kind: 'over-voltage', key: reading.key, millivolts: millivoltsFromVolts(reading.volts) }];
}

function wandering({ readings }: Seen): Found {
  const reading = readings.find((each) => !each.reading.steady)?.reading;
  return reading === undefined ? [] : [{ kind: 'unsteady', key: reading.key }];
}

function disagreeing({ groups }: Seen): Found {
  const group = groups.find(contradicts);
  if (group === undefined) return [];
  return [{ kind: 'readings disagree', key: group.key, volts: group.counted.map((each) => each.reading.volts) }];
}

function throughLoad({ point, conclusion, around }: Seen): Found {
  const kind = 'through a load';
  const dead = point.readings.find(
    (reading) => reversed(reading) && !feedsAreLive(reading) && isOnly(reversedLevels(reading, around), 'supply'),
  );
  if (dead !== undefined && conclusion.kind === 'open') return [{ kind, how: 'read it on', key: dead.key }];
  if (conclusion.kind === 'open' || conclusion.role !== 'ground' || point.pin === undefined) return [];
  const against = point.readings.find(reversed);
  if (against === undefined || point.readings.some(isGroundDrop)) return [];
  return [{ kind, how: 'read its drop', key: against.key }];
}
