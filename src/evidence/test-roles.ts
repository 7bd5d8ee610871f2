import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { keyPositions, type WireRole } from '../records/wire-role.ts';
import type { RoleTest } from './evidence.ts';
import { groundTest, pulledToGround } from './ground-test.ts';
import { isLeak, isLeakVolts } from './is-leak.ts';
import { isOnly, type LevelGroup, type Levelled, levelGroups, mayBeCutOff } from './levels-at.ts';
import { lightingTest } from './lighting-test.ts';
import { holdsUnderLoad } from './load-comparison.ts';
import { type Level, type RoleSignature, roleSignatures, signatureOf } from './role-signatures.ts';
import { signalTest } from './signal-test.ts';
import type { MeasuredLevel } from './supply-level.ts';
import type { Surroundings } from './surroundings.ts';

/** Every test of every role on one wire. */
export function testRoles(point: ProbePoint, readings: readonly Levelled[], around: Surroundings): readonly RoleTest[] {
  const groups = levelGroups(readings);
  const own: OwnTests = {
    ground: groundTest(point, around),
    pulled: pulledToGround(point, around),
    signal: signalTest(readings, groups, around),
    lighting: lightingTest(readings),
    load: holdsUnderLoad(point, around),
    dead: deadSoon(readings, around),
  };
  return roleSignatures.flatMap((signature) => [
    ...positionTests(point, groups, signature, around),
    ...ownTests(signature.role, own, around),
  ]);
}

/** The tests that are not about one key position. */
type OwnTests = Readonly<Record<'ground' | 'signal' | 'lighting' | 'load' | 'dead', RoleTest>> & {
  readonly pulled: readonly Reading[];
};

function positionTests(
  point: ProbePoint,
  groups: readonly LevelGroup[],
  signature: RoleSignature,
  around: Surroundings,
): readonly RoleTest[] {
  return keyPositions
    .filter((key) => signature.levels[key] !== 'either')
    .filter((key) => key !== 'crank' || around.cranks || around.supply.crank !== undefined)
    .map((key) => {
      const level = signature.levels[key];
      const results = groups
        .filter((group) => group.key === key)
        // only a constant would be live there with the isolator closed
        .filter(
          (group) =>
            signature.role !== 'constant' || group.counted.some((each) => !mayBeCutOff(each.reading, point, around)),
        )
        .map((group) => ({
          group,
          // a leak against a meter that draws nothing is neither nothing nor a feed: only a load can tell
          result:
            level === 'zero' && isLeak(group, groups, around) ? ('not measured' as const) : judge(group.levels, level),
        }));
      const result = worst(results.map((each) => each.result));
      return {
        role: signature.role,
        test: { kind: 'reads', level: level === 'supply' ? 'supply' : 'nothing', key },
        key,
        result,
        because: results
          .filter((each) => each.result === result && result !== 'not measured')
          .flatMap((each) => agreeing(each.group)),
      };
    });
}

/** The readings of a group that show what the group shows: one that was outvoted proves nothing. */
function agreeing(group: LevelGroup): readonly Reading[] {
  return group.counted
    .filter((each) => each.levels.every((level) => group.levels.includes(level)))
    .map((each) => each.reading);
}

/** Fails where anything fails, passes where something passes, else was not measured. */
function worst(results: readonly RoleTest['result'][]): RoleTest['result'] {
  if (results.includes('fails')) return 'fails';
  return results.includes('passes') ? 'passes' : 'not measured';
}

/** A test decides only where every level that the meter allows gives the same answer. */
function judge(levels: readonly MeasuredLevel[], expected: Level): RoleTest['result'] {
  const results = new Set(levels.map((level) => judgeLevel(level, expected)));
  return results.size === 1 ? ([...results][0] ?? 'not measured') : 'not measured';
}

function judgeLevel(level: MeasuredLevel, expected: Level): RoleTest['result'] {
  // a lossy feed and a reading above the supply are neither proof of the supply nor against it
  if (level === 'low' || level === 'above') return expected === 'zero' ? 'fails' : 'not measured';
  if (level === 'negative') return 'not measured';
  return level === expected ? 'passes' : 'fails';
}

function ownTests(
  role: WireRole,
  { ground, pulled, signal, lighting, load, dead }: OwnTests,
  around: Surroundings,
): readonly RoleTest[] {
  if (role === 'ground') return [ground];
  // through a lamp or a coil a dead feed is pulled to ground as well, a live one is not
  const against = ground.result === 'passes' ? ground.because : signatureOf(role).levels.on === 'supply' ? pulled : [];
  const noGround: RoleTest = {
    role,
    test: { kind: 'no ground' },
    key: null,
    result: against.length > 0 ? 'fails' : 'not measured',
    because: against,
  };
  if (role === 'signal') return [noGround, signal];
  if (role === 'lighting') return [noGround, lighting];
  const needsStarter: readonly RoleTest[] =
    role === 'start' && !around.cranks && around.supply.crank === undefined
      ? [{ role, test: { kind: 'has a starter' }, key: null, result: 'fails', because: [] }]
      : [];
  return [noGround, ...needsStarter, { ...load, role }, ...(role === 'ignition' ? [dead] : [])];
}

/** Ignition goes dead with the key: a line that stays up a minute or more and falls later is delayed power (DIN 72552 terminal 15 against delayed lines; the minute is common practice, no source). */
function deadSoon(readings: readonly Levelled[], around: Surroundings): RoleTest {
  const kept = keptPower(readings, around);
  return {
    role: 'ignition',
    test: { kind: 'goes dead without delay' },
    key: null,
    result: kept.length > 0 ? 'fails' : 'not measured',
    because: kept,
  };
}

/** Readings that show power kept on a minute or more after the end of the drive on a wire that falls to nothing later. */
export function keptPower(levelledReadings: readonly Levelled[], around: Surroundings): readonly Reading[] {
  const readings = levelledReadings.filter((each) => each.reading.key === 'out');
  const dead = readings.filter((each) => each.void === null && each.levels.join() === 'zero');
  const latest = Math.max(-1, ...dead.map((each) => each.reading.secondsWaited ?? 0));
  return (
    readings
      // a charge that fades is no power kept on
      // live at the time, whether it counted then or not
      .filter((each) => each.void === 'retained power' || (each.void === null && isOnly(each.levels, 'supply', 'low')))
      .filter((each) => !isLeakVolts(each.reading, around))
      .map((each) => each.reading)
      .filter((reading) => (reading.secondsWaited ?? 0) >= 60 && (reading.secondsWaited ?? 0) < latest)
  );
}
