/**
 * Minutes rounded to a step, up or to the nearest (a half goes up).
 * Model of neutral rounding: 29 CFR 785.48(b), nearest quarter hour.
 * @param minutes whole minutes
 * @param stepMinutes the step
 * @param rounding "up" or "nearest"
 */
export function roundMinutes(minutes: number, stepMinutes: number, rounding: 'up' | 'nearest'): number {
  const steps = rounding === 'up' ? Math.ceil(minutes / stepMinutes) : Math.floor(minutes / stepMinutes + 0.5);
  return steps * stepMinutes;
}
