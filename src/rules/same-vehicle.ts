import type { Vehicle } from '../records/vehicle.ts';

/** Whether two records are of one vehicle: by VIN, else by plate, else by unit number; unknown counts as another. */
export function isSameVehicle(one: Vehicle, other: Vehicle): boolean {
  for (const name of ['vin', 'plate', 'unitNumber'] as const) {
    const own = one[name];
    const theirs = other[name];
    if (own !== undefined && theirs !== undefined) return plain(own) === plain(theirs);
  }
  return false;
}

const plain = (text: string) => text.toUpperCase().replace(/[^\p{L}\p{N}]/gu, '');
