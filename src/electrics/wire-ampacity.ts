import type { Gauge } from '../records/probe-point.ts';
import { squareMillimetres } from './wire-resistance.ts';

/**
 * Current that a wire of 105 °C insulation carries in a bundle, amperes. Source: FAA AC 43.13-1B CHG 1, table 11-9
 * (70 °C around it, 33 or more wires in the bundle, so a strict yardstick: 33 CFR 183.425 table 5 allows 18 AWG 20 A).
 */
const bundleAmperesByAwg = [
  { awg: 24, amperes: 2.5 },
  { awg: 22, amperes: 3 },
  { awg: 20, amperes: 4 },
  { awg: 18, amperes: 6 },
  { awg: 16, amperes: 7 },
  { awg: 14, amperes: 10 },
  { awg: 12, amperes: 13 },
  { awg: 10, amperes: 17 },
  { awg: 8, amperes: 38 },
] as const;

/**
 * The current a conductor carries for long without growing hot, amperes; a size between two counts as the thinner. Null when thinner than 24 AWG.
 * Source: FAA AC 43.13-1B CHG 1, table 11-9, 105 °C column.
 * @param gauge the conductor
 */
export function bundleAmperes(gauge: Gauge): number | null {
  const area = squareMillimetres(gauge) * 1.01;
  return bundleAmperesByAwg.findLast((each) => squareMillimetres({ awg: each.awg }) <= area)?.amperes ?? null;
}
