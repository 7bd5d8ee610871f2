import type { Gauge } from '../records/probe-point.ts';
import { milliohmsPerMetre } from './wire-resistance.ts';

/** Strands lie longer than the wire they form; largest ratio of stranded to solid for 10 to 18 AWG. Source: NFPA 70, chapter 9, table 8 (1.98 / 1.93). */
const strandedRatio = 1.026;

/** Largest resistance of tinned stranded copper at 20 °C, ohm per 1000 ft. Source: FAA AC 43.13-1B CHG 1, table 11-9. */
const tinnedOhmsPerThousandFeet: Readonly<Record<number, number>> = {
  24: 28.4,
  22: 16.2,
  20: 9.88,
  18: 6.23,
  16: 4.81,
  14: 3.06,
  12: 2.02,
  10: 1.26,
  8: 0.7,
};

/** Largest resistance of fine-stranded copper at 20 °C, milliohms per metre. Source: IEC 60228, class 5; 0.35 mm² from ISO 6722-1 (from memory). */
const fineStrandedMilliohms: Readonly<Record<number, number>> = {
  0.35: 54.4,
  0.5: 39,
  0.75: 26,
  1: 19.5,
  1.5: 13.3,
  2.5: 7.98,
};

/** Largest ratio of the class 5 figures to solid copper of the nominal size, for sizes between them. Source: IEC 60228 (0.75 mm²: 26.0 / 22.99). */
const fineStrandedRatio = 1.132;

/**
 * The largest resistance that a stranded lead may have, milliohms per metre: the higher of the published figures.
 * Source: FAA AC 43.13-1B table 11-9, NFPA 70 chapter 9 table 8, IEC 60228; (234.5 + T) / 254.5 for heat.
 * @param gauge the conductor
 * @param celsius its temperature
 */
export function leadMilliohmsPerMetre(gauge: Gauge, celsius = 20): number {
  const hot = (234.5 + celsius) / 254.5;
  if ('squareMillimetres' in gauge) {
    const listed = fineStrandedMilliohms[gauge.squareMillimetres];
    return listed === undefined ? milliohmsPerMetre(gauge, celsius) * fineStrandedRatio : listed * hot;
  }
  const tinned = (tinnedOhmsPerThousandFeet[gauge.awg] ?? 0) / 0.3048;
  return Math.max(milliohmsPerMetre(gauge) * strandedRatio, tinned) * hot;
}
