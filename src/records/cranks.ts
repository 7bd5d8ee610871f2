import type { Vehicle } from './vehicle.ts';

/**
 * Whether an engine of the vehicle is turned by a 12 V or 24 V starter: not on hybrid and electric vehicles, which become "ready", nor on trailers.
 * Source: common practice, no source (a hybrid's engine is turned by its traction motor).
 * @param vehicle drive and class; an unknown drive counts as combustion
 */
export function cranks(vehicle: Pick<Vehicle, 'drive' | 'class'>): boolean {
  return (vehicle.drive ?? 'combustion') === 'combustion' && vehicle.class !== 'trailer';
}
