import type { MeterProfile } from '../records/book.ts';

/** Used where the book names no meter: ±0.5 % and two digits of 10 mV up to 60 V, a common hand meter (common practice, no source). */
const ordinary = { accuracyPercent: 0.5, accuracyDigits: 2, ranges: [{ toVolts: 60, digitVolts: 0.01 }] };

/**
 * How far a reading may be off, in millivolts, exact to the microvolt: ± percent of reading + digits, as meters are specified.
 * The digit is that of the smallest range that holds the reading, so a 24 V system may be read more coarsely than a 12 V one.
 * @param millivolts the reading
 * @param meter the meter's profile, or null for an ordinary one
 */
export function meterUncertaintyMillivolts(millivolts: number, meter: MeterProfile | null): number {
  const { accuracyPercent, accuracyDigits, ranges } = meter ?? ordinary;
  const rising = ranges.toSorted((one, other) => one.toVolts - other.toVolts);
  const range = rising.find((each) => Math.abs(millivolts) <= each.toVolts * 1000) ?? rising.at(-1);
  const digits = accuracyDigits * (range?.digitVolts ?? 0.01) * 1000;
  return Math.round(((Math.abs(millivolts) * accuracyPercent) / 100 + digits) * 1000) / 1000;
}
