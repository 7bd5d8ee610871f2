import type { MeterProfile } from '../records/book.ts';

/** Used where the book names no meter: ±0.5 % and two digits of 10 mV, a common hand meter (common practice, no source). */
const ordinary = { accuracyPercent: 0.5, accuracyDigits: 2, digitMillivolts: 10 };

/**
 * How far a reading may be off, in whole millivolts: ± percent of reading + digits, as meters are specified.
 * @param millivolts the reading
 * @param meter the meter's profile, or null for an ordinary one
 */
export function meterUncertaintyMillivolts(millivolts: number, meter: MeterProfile | null): number {
  const range = meter?.ranges.find((each) => Math.abs(millivolts) <= each.toVolts * 1000) ?? meter?.ranges.at(-1);
  const digitMillivolts = range === undefined ? ordinary.digitMillivolts : range.digitVolts * 1000;
  const percent = meter?.accuracyPercent ?? ordinary.accuracyPercent;
  const digits = meter?.accuracyDigits ?? ordinary.accuracyDigits;
  return Math.ceil((Math.abs(millivolts) * percent) / 100 + digits * digitMillivolts);
}
