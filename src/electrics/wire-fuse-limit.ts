import type { Gauge } from '../records/probe-point.ts';
import { bundleAmperes } from './wire-ampacity.ts';
import { squareMillimetres } from './wire-resistance.ts';

/** Largest fuse by gauge, amperes. Source: FAA AC 43.13-1B, table 11-3 (aircraft practice, a strict yardstick). */
const fuseAmperesMaxByAwg = [
  { awg: 22, amperes: 5 },
  { awg: 20, amperes: 5 },
  { awg: 18, amperes: 10 },
  { awg: 16, amperes: 10 },
  { awg: 14, amperes: 15 },
  { awg: 12, amperes: 20 },
  { awg: 10, amperes: 30 },
] as const;

/**
 * The largest fuse that protects a conductor, amperes; a metric size counts as the next thinner gauge. Null when thinner than 22 AWG.
 * A wire thinner than the table may have what it carries for long (24 AWG: 2.5 A), since a fuse at that figure opens first.
 * Source: FAA AC 43.13-1B, table 11-3; thinner: table 11-9.
 * @param gauge the smallest conductor behind the fuse
 */
export function fuseAmperesMax(gauge: Gauge): number | null {
  const area = squareMillimetres(gauge) * 1.01;
  return (
    fuseAmperesMaxByAwg.findLast((each) => squareMillimetres({ awg: each.awg }) <= area)?.amperes ??
    bundleAmperes(gauge)
  );
}
