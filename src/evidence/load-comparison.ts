import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import type { RoleTest } from './evidence.ts';
import { isOnly, type Levelled, levelsOf } from './levels-at.ts';
import { meterUncertaintyMillivolts } from './meter-uncertainty.ts';
import { isKeyOut, reversed, type Surroundings } from './surroundings.ts';

/** A feed loses less than this when a lamp or the device draws on it, on 12 V (common practice, no source). */
const loadLossMillivolts = 1000;

const feeds: ReadonlySet<KeyPosition> = new Set(['on', 'crank', 'running']);

/** The same wire in the same key position, without and with a load. */
export type LoadPair = { readonly unloaded: Reading; readonly loaded: Reading };

/** Pairs of readings in which the load took the volts away. */
export function fallsUnderLoad(point: ProbePoint, around: Surroundings): readonly LoadPair[] {
  return loadPairs(point).filter(({ unloaded, loaded }) => {
    if (!isOnly(levelsOf(unloaded, around), 'supply', 'low', 'above')) return false;
    const before = millivoltsFromVolts(unloaded.volts);
    const after = millivoltsFromVolts(loaded.volts);
    const unsure = [unloaded, loaded]
      .map((each) => meterUncertaintyMillivolts(millivoltsFromVolts(each.volts), around.meterOf(each)))
      .reduce((sum, each) => sum + each, 0);
    // smart charging may have lowered the supply between the two readings
    const stillSupply = loaded.key === 'running' && after >= (around.system / 12) * 12_400;
    return before - after - unsure > (loadLossMillivolts * around.system) / 12 && !stillSupply;
  });
}

function loadPairs(point: ProbePoint): readonly LoadPair[] {
  const byGround = point.readings.filter((reading) => !reversed(reading) && reading.isolator !== 'open');
  return byGround
    .filter((reading) => reading.loaded)
    .flatMap((loaded) => {
      const alike = byGround.filter(
        (each) => !each.loaded && each.key === loaded.key && (each.lights ?? 'off') === (loaded.lights ?? 'off'),
      );
      return alike.map((unloaded) => ({ unloaded, loaded }));
    });
}

/** The test of every feed that it carries current: its volts stay when something draws on it. */
export function holdsUnderLoad(point: ProbePoint, around: Surroundings): RoleTest {
  const falls = fallsUnderLoad(point, around);
  const pairs = falls.length > 0 ? falls : loadPairs(point);
  return {
    role: 'constant',
    test: { kind: 'holds under load' },
    key: null,
    result: falls.length > 0 ? 'fails' : pairs.length > 0 ? 'passes' : 'not measured',
    because: pairs.flatMap((pair) => [pair.unloaded, pair.loaded]),
  };
}

/**
 * Whether the odd volts of a wire may be ghost volts that a high-impedance meter shows on a floating wire:
 * they vanish under load, or stand there all the same with the vehicle asleep (common practice, no source).
 */
export function isGhost(levelledReadings: readonly Levelled[]): boolean {
  const readings = levelledReadings.filter((each) => each.void === null);
  const isFed = readings.some((each) => feeds.has(each.reading.key) && isOnly(each.levels, 'supply'));
  if (isFed) return false;
  const odd = readings.filter((each) => !each.reading.loaded && isOnly(each.levels, 'between'));
  const vanishes = readings.some(
    (each) =>
      each.reading.loaded && isOnly(each.levels, 'zero') && odd.some((one) => one.reading.key === each.reading.key),
  );
  const awake = odd.some((each) => !isKeyOut(each.reading.key) && each.reading.key !== 'crank');
  return vanishes || (awake && odd.some((each) => each.reading.key === 'out'));
}
