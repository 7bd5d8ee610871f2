/** Volts of a rested 12 V lead-acid battery and what is left in it. Source: Army TM 5-3805-262-20, p. 5-142 (surface charge taken off, 3 minutes' wait). */
const chargeByMillivolts = [
  { millivolts: 11_700, percent: 0 },
  { millivolts: 12_000, percent: 25 },
  { millivolts: 12_200, percent: 50 },
  { millivolts: 12_400, percent: 75 },
  { millivolts: 12_600, percent: 100 },
] as const;

/** A 12 V battery above this is being charged or has just been; a full AGM battery rests at 13.0 V at most. Source: Army TM 9-6115-730-24 WP 0050. */
const restingMillivoltsMax = 13_000;

/** A 12 V battery below this needs a load test. Source: Army TM 5-3805-262-20, p. 5-142. */
export const loadTestMillivolts = 12_400;

/**
 * How full a resting battery is, in whole percent, in straight lines between the rows of the table; null when it does not rest.
 * Source: Army TM 5-3805-262-20, p. 5-142; a 24 V pair is two of them in series.
 * @param restMillivolts across the posts, engine stopped, rested
 * @param systemVolts 12 or 24
 */
export function batteryPercent(restMillivolts: number, systemVolts: 12 | 24): number | null {
  const one = (restMillivolts * 12) / systemVolts;
  if (one > restingMillivoltsMax) return null;
  const above = chargeByMillivolts.findIndex((row) => row.millivolts >= one);
  if (above === -1) return 100;
  const high = chargeByMillivolts[above];
  const low = chargeByMillivolts[above - 1];
  if (high === undefined || low === undefined) return 0;
  const share = (one - low.millivolts) / (high.millivolts - low.millivolts);
  return Math.floor(low.percent + share * (high.percent - low.percent) + 1e-9);
}
