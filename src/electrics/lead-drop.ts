/**
 * Volts lost along a conductor, in millivolts, not rounded.
 * Source: Ohm's law as worked in FAA AC 43.13-1B, tables 11-7 and 11-8 (ohm per foot x feet x amperes).
 * @param milliohmsPerMetre resistance of the conductor
 * @param lengthMillimetres length of the conductor, one way
 * @param milliamps current
 */
export function dropMillivolts(milliohmsPerMetre: number, lengthMillimetres: number, milliamps: number): number {
  return (milliohmsPerMetre * lengthMillimetres * milliamps) / 1_000_000;
}

/**
 * The longest conductor that stays within a drop, in whole millimetres; Infinity without current.
 * Source: FAA AC 43.13-1B chapter 11: L2 = 254.5 x L1 / (234.5 + T2) follows from the resistance at that temperature.
 * @param milliohmsPerMetre resistance of the conductor at its temperature
 * @param dropMillivoltsMax the drop allowed
 * @param milliamps current
 */
export function lengthMillimetresMax(milliohmsPerMetre: number, dropMillivoltsMax: number, milliamps: number): number {
  const lost = milliohmsPerMetre * milliamps;
  return lost === 0 ? Number.POSITIVE_INFINITY : Math.floor((dropMillivoltsMax * 1_000_000) / lost);
}

/** Continuous drop allowed between source and device, millivolts. Source: FAA AC 43.13-1B table 11-6 (14 V system 0.5 V, 28 V system 1 V; from memory, agrees with the worked examples of tables 11-7 and 11-8). */
export const continuousDropMillivoltsMax: Readonly<Record<12 | 24, number>> = { 12: 500, 24: 1000 };
