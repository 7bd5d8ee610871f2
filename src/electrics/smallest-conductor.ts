import type { Gauge } from '../records/probe-point.ts';
import { squareMillimetres } from './wire-resistance.ts';

/**
 * The thinnest of several conductors in a row: it decides what the fuse before them may be. Null when none is known.
 * @param gauges the conductors behind one fuse; unknown ones may be undefined
 */
export function smallestConductor(gauges: readonly (Gauge | undefined)[]): Gauge | null {
  const known = gauges.filter((gauge) => gauge !== undefined);
  return known.toSorted((one, other) => squareMillimetres(one) - squareMillimetres(other))[0] ?? null;
}

/**
 * Whether one conductor is smaller than another by more than the step between the American and the metric row of sizes.
 * Metric sizes are nominal and their nearest American size is up to a tenth apart (0.75 mm² and 18 AWG, 0.82 mm²).
 * Source: sizes of ASTM B258 and IEC 60228; that neighbours of the two rows replace each other is common practice, no source.
 * @param gauge the conductor in question
 * @param than the conductor it is compared with
 */
export function isSmaller(gauge: Gauge, than: Gauge): boolean {
  const sameRow = 'awg' in gauge === 'awg' in than;
  return squareMillimetres(gauge) < squareMillimetres(than) * (sameRow ? 1 : 0.9);
}

/**
 * A conductor's size as the trade writes it ("18 AWG", "0.75 mm²").
 * @param gauge the conductor
 */
export function writeGauge(gauge: Gauge): string {
  return 'awg' in gauge ? `${gauge.awg} AWG` : `${gauge.squareMillimetres} mm²`;
}
