import { z } from 'zod';
import { pointName, reading } from './reading.ts';
import { line } from './shape.ts';
import { wireRole } from './wire-role.ts';

/** A conductor's size, American or metric. */
export const gauge = z.union(
  [
    z.strictObject({ awg: z.int('must be a whole gauge number').min(0).max(30) }),
    z.strictObject({ squareMillimetres: z.number().min(0.1).max(120) }),
  ],
  'must be {"awg": 18} or {"squareMillimetres": 0.75}',
);
export type Gauge = z.infer<typeof gauge>;

/** One place where the meter was held to the vehicle: a pin or a wire. */
export const probePoint = z.strictObject({
  name: pointName,
  connector: line.optional(),
  pin: line.optional(),
  colour: line.optional(),
  stripe: line.optional(),
  gauge: gauge.optional(),
  /** the sleeve's colour when it warns: yellow for restraint systems, orange for high voltage */
  sleeve: z.enum(['none', 'yellow', 'orange'], 'must be none, yellow or orange').default('none'),
  /** true when the wire is one of a twisted pair */
  twisted: z.boolean().default(false),
  /** amperes of the vehicle fuse that feeds it, where known */
  vehicleFuseAmperes: z.number().positive().max(500).optional(),
  /** which side of a battery isolator it is on */
  isolatorSide: z.enum(['battery', 'switched']).optional(),
  readings: z.array(reading).max(60).default([]),
  /** the installer's word on this wire */
  verdict: wireRole.optional(),
  note: line.optional(),
});
export type ProbePoint = z.infer<typeof probePoint>;
