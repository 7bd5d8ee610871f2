import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { MeterProfile } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import type { Reading } from '../records/reading.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import type { Evidence } from './evidence.ts';
import { meterUncertaintyMillivolts } from './meter-uncertainty.ts';

/** A circuit that carries current reads lower than the battery: up to 0.6 V on 12 V, 1.2 V on 24 V still counts as supply (common practice, no source). */
const circuitAllowance = { 12: 600, 24: 1200 } as const;
/** Up to 0.5 V on 12 V, 1.0 V on 24 V counts as nothing (common practice, no source). */
const zeroAllowance = { 12: 500, 24: 1000 } as const;

export type MeasuredLevel = 'supply' | 'zero' | 'between' | 'above' | 'negative';

/** The supply in each key position: the mean of its readings there. */
export function supplyByPosition(job: Job): Evidence['supply'] {
  const before = (job.supply ?? []).filter((reading) => reading.taken === 'before');
  const keys = [...new Set(before.map((reading) => reading.key))];
  return Object.fromEntries(
    keys.map((key) => {
      const from = before.filter((reading) => reading.key === key);
      const sum = from.reduce((all, reading) => all + millivoltsFromVolts(reading.volts), 0);
      return [key, { millivolts: Math.round(sum / from.length), from }];
    }),
  );
}

/** The nominal system that the supply's readings show, or null where they do not tell. */
export function systemFrom(supply: Evidence['supply']): 12 | 24 | null {
  const rest = Object.entries(supply)
    .filter(([key]) => key !== 'crank')
    .map(([, each]) => each.millivolts);
  if (rest.length === 0) return null;
  if (rest.every((millivolts) => millivolts > 9000 && millivolts < 16_500)) return 12;
  return rest.every((millivolts) => millivolts > 18_000 && millivolts < 33_000) ? 24 : null;
}

/**
 * Where a reading stands between nothing and the supply of the same key position.
 * @param reading the reading, against chassis or battery negative
 * @param supply the supply's own readings
 * @param system nominal volts
 * @param meter the meter used, or null
 */
export function measuredLevel(
  reading: Reading,
  supply: Evidence['supply'],
  system: 12 | 24,
  meter: MeterProfile | null,
): MeasuredLevel {
  const millivolts = millivoltsFromVolts(reading.volts);
  const own = supply[reading.key]?.millivolts;
  const expected = own ?? nominal(reading.key, system);
  const unsure = meterUncertaintyMillivolts(millivolts, meter) + meterUncertaintyMillivolts(expected, meter);
  // without the supply's own reading only the order of size can be judged
  const below = own === undefined ? 2.5 * circuitAllowance[system] : circuitAllowance[system];
  if (millivolts < -zeroAllowance[system] - unsure) return 'negative';
  if (millivolts <= zeroAllowance[system] + unsure) return 'zero';
  if (
    millivolts >
    expected + unsure + (own === undefined ? 3 * circuitAllowance[system] : circuitAllowance[system] / 2)
  )
    return 'above';
  return millivolts >= expected - below - unsure ? 'supply' : 'between';
}

function nominal(key: KeyPosition, system: 12 | 24): number {
  const twelve = key === 'running' ? 13_800 : key === 'crank' ? 10_200 : 12_500;
  return (twelve * system) / 12;
}
