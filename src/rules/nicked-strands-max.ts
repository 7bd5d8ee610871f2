import type { Connection } from '../records/connection.ts';

/**
 * How many strands of a copper wire may be nicked: two where the gauge is not known.
 * Source: FAA AC 43.13-1B table 11-13 (24-14 AWG 2, 12-10 AWG 4, 8-4 AWG 6); square millimetres go by the AWG size below them (2.08, 5.26 mm²).
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
