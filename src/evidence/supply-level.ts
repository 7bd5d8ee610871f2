import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { MeterProfile } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import type { SupplyReading } from '../records/reading.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import { overVoltageMillivolts } from './electrical-limits.ts';
import type { Evidence } from './evidence.ts';
import { meterUncertaintyMillivolts } from './meter-uncertainty.ts';

// All figures for 12 V; twice as much on 24 V. Common practice, no source, except where said.
/** A circuit that carries current reads lower than the battery and still carries the supply. */
const circuitLossMillivolts = 700;
/** What counts as nothing. */
const zeroMillivolts = 500;
/** A wire cannot read more than the supply; this much is put down to the moment between two readings. */
const aboveMillivolts = 300;
/** The dip while cranking differs from one attempt to the next. */
const crankSpreadMillivolts = 2000;
/** Below this share of the supply a steady reading is no lossy feed but a signal. */
const lossyShare = 0.8;
/** Where the supply was not measured, only the order of size can be judged. */
const nominalMillivolts: Readonly<Record<KeyPosition, readonly [number, number]>> = {
  out: [11_000, 14_300],
  off: [11_000, 14_300],
  accessory: [11_000, 14_300],
  on: [11_000, 14_300],
  crank: [6000, 13_000],
  running: [12_300, 15_600],
};

/** Where a reading stands: negative, nothing, an odd fraction, a lossy feed, the supply, more than the supply. */
export type MeasuredLevel = 'negative' | 'zero' | 'between' | 'low' | 'supply' | 'above';
const levels: readonly MeasuredLevel[] = ['negative', 'zero', 'between', 'low', 'supply', 'above'];

/** What a wire that carries the supply may read in one key position, in millivolts. */
export type SupplyRange = {
  readonly measured: boolean;
  readonly lowest: number;
  readonly highest: number;
  readonly unsure: number;
};

/** The supply in each key position: the mean of its readings there. */
export function supplyByPosition(job: Job): Evidence['supply'] {
  return supplyFrom((job.supply ?? []).filter((reading) => reading.taken === 'before'));
}

/** The mean of supply readings by key position. */
export function supplyFrom(readings: readonly SupplyReading[]): Evidence['supply'] {
  const keys = [...new Set(readings.map((reading) => reading.key))];
  return Object.fromEntries(
    keys.map((key) => {
      const from = readings.filter((reading) => reading.key === key);
      const sum = from.reduce((all, reading) => all + millivoltsFromVolts(reading.volts), 0);
      return [key, { millivolts: Math.round(sum / from.length), from }];
    }),
  );
}

/** True where the supply's own readings in one key position cannot all be right. */
export function supplyDisagrees(key: KeyPosition, from: readonly SupplyReading[], system: 12 | 24): boolean {
  const volts = from.map((reading) => millivoltsFromVolts(reading.volts));
  const moves = key === 'crank' || key === 'running';
  return Math.max(...volts) - Math.min(...volts) > ((moves ? 3000 : 1000) * system) / 12;
}

/**
 * The range that counts as the supply in one key position.
 * @param key the key position
 * @param supply the supply's own readings
 * @param system nominal volts
 * @param meterOf the meter of a reading
 */
export function supplyRange(
  key: KeyPosition,
  supply: Evidence['supply'],
  system: 12 | 24,
  meterOf: (reading: SupplyReading) => MeterProfile | null,
): SupplyRange {
  const scale = system / 12;
  const own = supply[key];
  if (own === undefined || supplyDisagrees(key, own.from, system)) {
    const [lowest, highest] = nominalMillivolts[key];
    return { measured: false, lowest: lowest * scale, highest: highest * scale, unsure: 0 };
  }
  const read = own.from.map((reading) => millivoltsFromVolts(reading.volts));
  const least = Math.min(...read);
  const most = Math.max(...read);
  const unsure = Math.max(
    ...own.from.map((each) => meterUncertaintyMillivolts(millivoltsFromVolts(each.volts), meterOf(each))),
  );
  if (key === 'crank') {
    const lowest = Math.max(least / 2, least - crankSpreadMillivolts * scale);
    // a feed that is held up while the engine is started reads what the supply reads at rest
    const held = Math.max(
      ...['on', 'accessory', 'off', 'out'].map((each) => supply[each as KeyPosition]?.millivolts ?? 0),
    );
    const highest = Math.max(most + crankSpreadMillivolts * scale, held + aboveMillivolts * scale);
    return { measured: true, lowest, highest, unsure };
  }
  const highest = most + aboveMillivolts * scale;
  // smart charging moves the supply between two readings, and nothing but the supply reads that high
  const charging = key === 'running' ? overVoltageMillivolts[system] : 0;
  return {
    measured: true,
    lowest: least - circuitLossMillivolts * scale,
    highest: Math.max(highest, charging),
    unsure,
  };
}

/**
 * The levels a reading may stand at, as far as the meter can tell: one, or two neighbours when it is too close to a limit.
 * @param millivolts the reading, against chassis or battery negative
 * @param range what the supply reads in the same key position
 * @param system nominal volts
 * @param meter the meter used, or null
 */
export function measuredLevels(
  millivolts: number,
  range: SupplyRange,
  system: 12 | 24,
  meter: MeterProfile | null,
): readonly MeasuredLevel[] {
  const zero = (zeroMillivolts * system) / 12;
  const own = meterUncertaintyMillivolts(millivolts, meter);
  const both = own + range.unsure;
  const limits: readonly (readonly [number, number])[] = [
    [-zero, own],
    [zero, own],
    [Math.min(range.lowest, lossyShare * (range.lowest + (circuitLossMillivolts * system) / 12)), both],
    [range.lowest, both],
    [range.highest, both],
  ];
  const first = limits.findIndex(([limit, unsure]) => millivolts <= limit + unsure);
  const last = limits.findIndex(([limit, unsure]) => millivolts < limit - unsure);
  return levels.slice(first === -1 ? 5 : first, (last === -1 ? 5 : last) + 1);
}
