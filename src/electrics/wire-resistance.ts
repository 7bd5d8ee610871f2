import type { Gauge } from '../records/probe-point.ts';

/** Resistivity of annealed copper at 20 °C, nanoohm metres. Source: IACS, 1.7241e-8 ohm m (NBS Handbook 100). */
const copperNanoohmMetres = 17.241;

/**
 * Cross-section of a conductor in square millimetres.
 * Source: ASTM B258, diameter 0.005 in x 92^((36 - n) / 39).
 * @param gauge American or metric
 */
export function squareMillimetres(gauge: Gauge): number {
  if ('squareMillimetres' in gauge) return gauge.squareMillimetres;
  const diameter = 0.127 * 92 ** ((36 - gauge.awg) / 39);
  return (Math.PI * diameter ** 2) / 4;
}

/**
 * Resistance of solid copper, milliohms per metre.
 * Source: (234.5 + T) / 254.5 rule, FAA AC 43.13-1B chapter 11.
 * @param gauge the conductor
 * @param celsius its temperature
 */
export function milliohmsPerMetre(gauge: Gauge, celsius = 20): number {
  return ((copperNanoohmMetres / squareMillimetres(gauge)) * (234.5 + celsius)) / 254.5;
}
