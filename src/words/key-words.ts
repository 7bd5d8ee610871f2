import type { Vehicle } from '../records/vehicle.ts';
import type { KeyPosition } from '../records/wire-role.ts';

/** A key position by its name on a vehicle: one with a start button sleeps, one with a high-voltage battery gets ready. */
export type KeyName = KeyPosition | 'ready' | 'asleep' | 'switched off' | 'ignition on';

/** How a vehicle names its key positions: by a key or a button, with an engine or without. */
export type KeyWords = Pick<Vehicle, 'drive' | 'start'>;

/**
 * The name of a key position on a vehicle.
 * @param key the key position
 * @param vehicle what decides its name
 */
export function keyName(key: KeyPosition, vehicle: KeyWords): KeyName {
  if (key === 'running' && vehicle.drive !== undefined && vehicle.drive !== 'combustion') return 'ready';
  if (vehicle.start !== 'button') return key;
  return key === 'out' ? 'asleep' : key === 'off' ? 'switched off' : key === 'on' ? 'ignition on' : key;
}
