import { z } from 'zod';
import { slug, volts } from './shape.ts';
import { keyPosition } from './wire-role.ts';

/** The name of a probe point within its job, such as "P1". */
export const pointName = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,15}$/, 'must be a short name of letters and digits, such as "P1"');

/** Where the meter's black lead was held. */
export const references = ['chassis', 'battery negative', 'battery positive', 'probe point'] as const;

/** Volts at one place in one key position, with what is needed to judge them. */
export const reading = z.strictObject({
  key: keyPosition,
  volts,
  /** where the black lead was held; `probe point` needs `referencePoint` */
  reference: z.enum(references, `must be one of ${references.join(', ')}`).default('chassis'),
  referencePoint: pointName.optional(),
  /** seconds between reaching this key position and reading the meter */
  secondsWaited: z.int('must be a whole number of seconds').min(0).max(86_400).optional(),
  /** true when the circuit carried the device or a test lamp while read */
  loaded: z.boolean().default(false),
  loadMilliamps: z.int().min(0).max(100_000).optional(),
  /** whether the vehicle's lamps were switched on while read; absent counts as off */
  lights: z.enum(['on', 'off'], 'must be "on" or "off"').optional(),
  /** how the battery isolator stood, on vehicles that have one; absent counts as closed */
  isolator: z.enum(['open', 'closed'], 'must be "open" or "closed"').optional(),
  /** false when the display wandered */
  steady: z.boolean().default(true),
  /** id of a meter profile in book.json; else the book's first */
  meter: slug.optional(),
  /** taken before the device was connected, or after */
  taken: z.enum(['before', 'after']).default('before'),
});
export type Reading = z.infer<typeof reading>;

/** The supply's own volts: at the battery posts, or at a wire already known to be constant. */
export const supplyReading = z.strictObject({
  key: keyPosition,
  volts,
  at: z.enum(['battery', 'known constant'], 'must be "battery" or "known constant"').default('battery'),
  steady: z.boolean().default(true),
  meter: slug.optional(),
  taken: z.enum(['before', 'after']).default('before'),
});
export type SupplyReading = z.infer<typeof supplyReading>;
