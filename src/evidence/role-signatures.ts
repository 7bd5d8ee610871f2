import type { KeyPosition, WireRole } from '../records/wire-role.ts';

/** What a wire reads against chassis or battery negative: the supply of that moment, nothing, or either. */
export type Level = 'supply' | 'zero' | 'either';

/** A switched role's level in each key position, and the positions without which it is not proven. */
export type RoleSignature = {
  readonly role: WireRole;
  readonly levels: Readonly<Record<KeyPosition, Level>>;
  readonly required: readonly KeyPosition[];
};

const anything = {
  out: 'either',
  off: 'either',
  accessory: 'either',
  on: 'either',
  crank: 'either',
  running: 'either',
} as const;

/**
 * The roles by key position, with the vehicle's lamps off. Lighting and signal are told by tests of their own.
 * Source: DIN 72552 definitions of 30, 15, 75 and 50; that accessory lines usually drop while cranking is common practice, no source.
 */
export const roleSignatures: readonly RoleSignature[] = [
  {
    role: 'constant',
    levels: { out: 'supply', off: 'supply', accessory: 'supply', on: 'supply', crank: 'supply', running: 'supply' },
    required: ['out', 'on'],
  },
  {
    role: 'ignition',
    levels: { out: 'zero', off: 'zero', accessory: 'zero', on: 'supply', crank: 'supply', running: 'supply' },
    required: ['out', 'accessory', 'on', 'crank'],
  },
  {
    role: 'accessory',
    levels: { out: 'zero', off: 'zero', accessory: 'supply', on: 'supply', crank: 'either', running: 'supply' },
    required: ['out', 'accessory'],
  },
  {
    role: 'start',
    levels: { out: 'zero', off: 'zero', accessory: 'zero', on: 'zero', crank: 'supply', running: 'zero' },
    required: ['on', 'crank'],
  },
  {
    role: 'ground',
    levels: { out: 'zero', off: 'zero', accessory: 'zero', on: 'zero', crank: 'zero', running: 'zero' },
    required: [],
  },
  { role: 'lighting', levels: anything, required: [] },
  { role: 'signal', levels: anything, required: [] },
];

/** The signature of a role; that of `unknown` allows anything and requires nothing. */
export function signatureOf(role: WireRole): RoleSignature {
  return roleSignatures.find((each) => each.role === role) ?? { role, levels: anything, required: [] };
}
