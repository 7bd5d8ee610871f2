import type { Connection } from '../records/connection.ts';

/**
 * How many strands of a copper wire may be nicked: two where the gauge is not known.
 * Source: FAA AC 43.13-1B table 11-13 (24-14 AWG 2, 12-10 AWG 4, 8-4 AWG 6); square millimetres count as the next thinner AWG size (12 AWG 3.31, 8 AWG 8.37 mm²).
 */
export function nickedStrandsMax(gauge: Connection['gauge']): number {
  if (gauge === undefined) return 2;
  if ('awg' in gauge) {
    if (gauge.awg >= 14) return 2;
    return gauge.awg >= 10 ? 4 : 6;
  }
  if (gauge.squareMillimetres < 3.31) return 2;
  return gauge.squareMillimetres < 8.37 ? 4 : 6;
}
