/** Charge that a battery should keep so that it still starts the vehicle, percent (common practice, no source). */
const keptPercent = 50;

/**
 * Days until a resting battery is down to half, where a start is no longer sure.
 * Half of the capacity is a common assumption (common practice, no source); days = usable Ah / (A x 24).
 * @param capacityAmpereHours printed on the battery
 * @param milliamps whole current asleep
 * @param chargePercent what is in the battery when it begins to stand
 */
export function standingDays(capacityAmpereHours: number, milliamps: number, chargePercent = 100): number {
  return (usableAmpereHours(capacityAmpereHours, chargePercent) * 1000) / (milliamps * 24);
}

/**
 * Ampere hours that may be drawn before a start is no longer sure.
 * @param capacityAmpereHours printed on the battery
 * @param chargePercent what is in the battery now
 */
export function usableAmpereHours(capacityAmpereHours: number, chargePercent: number): number {
  return (capacityAmpereHours * Math.max(0, chargePercent - keptPercent)) / 100;
}
