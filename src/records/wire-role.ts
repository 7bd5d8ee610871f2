import { z } from 'zod';

/** What a wire is. */
export const wireRoles = [
  'constant',
  'ignition',
  'accessory',
  'start',
  'ground',
  'lighting',
  'signal',
  'unknown',
] as const;
export const wireRole = z.enum(wireRoles, `must be one of ${wireRoles.join(', ')}`);
export type WireRole = z.infer<typeof wireRole>;

/** Positions of the key, in the order in which a driver passes through them; `running` is "ready" on hybrid and electric vehicles, `out` is "locked and asleep" on push-button start. */
export const keyPositions = ['out', 'off', 'accessory', 'on', 'crank', 'running'] as const;
export const keyPosition = z.enum(keyPositions, `must be one of ${keyPositions.join(', ')}`);
export type KeyPosition = z.infer<typeof keyPosition>;

/**
 * Terminal numbers for the roles.
 * Source: DIN 72552 (30 battery positive direct, 15 switched by the ignition switch, 75 accessory, 50 starter control, 31 ground, 58 lights).
 */
export const terminalNumbers: Readonly<Record<WireRole, string | null>> = {
  constant: '30',
  ignition: '15',
  accessory: '75',
  start: '50',
  ground: '31',
  lighting: '58',
  signal: null,
  unknown: null,
};
