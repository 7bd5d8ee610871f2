import type { Vehicle } from '../records/vehicle.ts';
import type { KeyPosition } from '../records/wire-role.ts';

/** The name of a key position on a vehicle: one with a start button sleeps, one with a high-voltage battery gets ready. */
export function keyWord(key: KeyPosition, vehicle: Pick<Vehicle, 'drive' | 'start'>): KeyPosition | 'ready' | 'asleep' {
  if (key === 'running' && vehicle.drive !== undefined && vehicle.drive !== 'combustion') return 'ready';
  return key === 'out' && vehicle.start === 'button' ? 'asleep' : key;
}
