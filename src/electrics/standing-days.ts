/**
 * Days until a resting battery is down to half, where a start is no longer sure.
 * Half of the capacity is a common assumption (common practice, no source); days = usable Ah / (A x 24).
 * @param capacityAmpereHours printed on the battery
 * @param milliamps whole current asleep
 */
export function standingDays(capacityAmpereHours: number, milliamps: number): number {
  return (capacityAmpereHours * 0.5 * 1000) / (milliamps * 24);
}
