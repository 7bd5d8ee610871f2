/** Above this the regulator is at fault, millivolts by nominal volts (13.5 to 14.8 V is the workshop window; over 15.0 V is a fault; common practice, no source). */
export const overVoltageMillivolts: Readonly<Record<12 | 24, number>> = { 12: 15_000, 24: 30_000 };

/** Largest drop of a ground under load, millivolts (common practice, no source). */
export const groundDropMillivoltsMax = 100;

/** More than a 24 V system ever shows, charging and over-voltage included: a 48 V line, millivolts (common practice, no source). */
export const fortyEightVoltsMillivolts = 36_000;
