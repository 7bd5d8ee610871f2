import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { MeterProfile } from '../records/book.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { type KeyPosition, keyPositions } from '../records/wire-role.ts';
import type { Evidence, RoleTest } from './evidence.ts';
import { meterUncertaintyMillivolts } from './meter-uncertainty.ts';
import { type Level, type RoleSignature, roleSignatures } from './role-signatures.ts';
import { measuredLevel } from './supply-level.ts';

/** Power kept on after key out may last minutes: a reading at supply level counts as lasting after this wait (common practice, no source). */
export const retainedPowerSeconds = 600;
/** Largest drop of a loaded ground, millivolts (common practice, no source). */
export const groundDropMillivoltsMax = 100;

/** What the tests of one wire need to know besides its readings. */
export type Surroundings = {
  readonly supply: Evidence['supply'];
  readonly system: 12 | 24;
  readonly cranks: boolean;
  /** whether another wire of the job is proven constant by its own readings */
  readonly isConstant: (pointName: string) => boolean;
  readonly meterOf: (reading: Reading) => MeterProfile | null;
};

const byGround = (reading: Reading) =>
  (reading.reference === 'chassis' || reading.reference === 'battery negative') && reading.taken === 'before';

/** Readings against a live wire: the meter's black lead on battery positive or on a proven constant. */
export const reversed = (reading: Reading) =>
  reading.reference === 'battery positive' || reading.reference === 'probe point';

/** Every test of every role on one wire. */
export function testRoles(point: ProbePoint, around: Surroundings): readonly RoleTest[] {
  return roleSignatures.flatMap((signature) => [
    ...positionTests(point, signature, around),
    ...ownTests(point, signature.role, around),
  ]);
}

function positionTests(point: ProbePoint, signature: RoleSignature, around: Surroundings): readonly RoleTest[] {
  return keyPositions
    .filter((key) => signature.levels[key] !== 'either' && (around.cranks || key !== 'crank'))
    .map((key) => {
      const level = signature.levels[key];
      const readings = point.readings.filter((reading) => reading.key === key && byGround(reading));
      const results = readings.map((reading) => ({ reading, result: judge(reading, level, around) }));
      const failing = results.filter((each) => each.result === 'fails');
      const passing = results.filter((each) => each.result === 'passes');
      const result = failing.length > 0 ? 'fails' : passing.length > 0 ? 'passes' : 'not measured';
      return {
        role: signature.role,
        test: `reads ${level === 'supply' ? 'the supply' : 'nothing'} ${where(key)}`,
        result,
        because: (result === 'fails' ? failing : passing).map((each) => each.reading),
      };
    });
}

function judge(reading: Reading, level: Level, around: Surroundings): RoleTest['result'] {
  const measured = measuredLevel(reading, around.supply, around.system, around.meterOf(reading));
  const keyIsOut = reading.key === 'out' || reading.key === 'off';
  if (keyIsOut && measured !== 'zero' && (reading.secondsWaited ?? 0) < retainedPowerSeconds) return 'not measured';
  return measured === level ? 'passes' : 'fails';
}

function ownTests(point: ProbePoint, role: RoleTest['role'], around: Surroundings): readonly RoleTest[] {
  if (role === 'ground') return [groundTest(point, around)];
  if (role === 'signal') return [signalTest(point, around)];
  if (role === 'lighting')
    return [{ role, test: 'rises when the lamps are switched on', result: 'not measured', because: [] }];
  return [
    {
      role,
      test: 'is no ground by the reversed reading',
      result: groundTest(point, around).result === 'passes' ? 'fails' : 'not measured',
      because: [],
    },
  ];
}

function groundTest(point: ProbePoint, around: Surroundings): RoleTest {
  const proofs = point.readings.filter((reading) => {
    // a reference that is not proven live proves nothing: two dead wires agree with each other
    if (reading.reference === 'battery positive') return reading.taken === 'before';
    if (reading.reference === 'probe point')
      return reading.taken === 'before' && around.isConstant(reading.referencePoint ?? '');
    // without a current there is no drop: a dead wire marked as loaded reads nothing as well
    return reading.reference === 'battery negative' && reading.loaded && (reading.loadMilliamps ?? 0) > 0;
  });
  const results = proofs.map((reading) => {
    const millivolts = millivoltsFromVolts(reading.volts);
    if (!reversed(reading)) return Math.abs(millivolts) <= groundDropMillivoltsMax ? 'passes' : 'neither';
    const expected = -(around.supply[reading.key]?.millivolts ?? (around.system === 12 ? 12_900 : 25_800));
    const slack =
      meterUncertaintyMillivolts(millivolts, around.meterOf(reading)) +
      (around.supply[reading.key] === undefined ? 2000 : 300) * (around.system / 12);
    return Math.abs(millivolts - expected) <= slack ? 'passes' : 'fails';
  });
  const result = results.includes('fails') ? 'fails' : results.includes('passes') ? 'passes' : 'not measured';
  return {
    role: 'ground',
    test: 'shows the supply with a negative sign against a known constant, or a small drop under load',
    result,
    because: result === 'not measured' ? [] : proofs,
  };
}

function signalTest(point: ProbePoint, around: Surroundings): RoleTest {
  const live = point.readings.filter(
    (reading) => byGround(reading) && (reading.key === 'on' || reading.key === 'running') && !reading.loaded,
  );
  const odd = live.filter(
    (reading) =>
      !reading.steady || measuredLevel(reading, around.supply, around.system, around.meterOf(reading)) === 'between',
  );
  const result = odd.length > 0 ? 'passes' : live.length > 0 ? 'fails' : 'not measured';
  return {
    role: 'signal',
    test: 'reads an odd fraction of the supply, or wanders, with the key on',
    result,
    because: odd.length > 0 ? odd : live,
  };
}

/** A key position in words. */
export function where(key: KeyPosition): string {
  const words: Readonly<Record<KeyPosition, string>> = {
    out: 'with the key out',
    off: 'with the key off',
    accessory: 'in accessory',
    on: 'with the key on',
    crank: 'while cranking',
    running: 'with the engine running',
  };
  return words[key];
}
