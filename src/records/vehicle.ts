import { z } from 'zod';
import { line } from './shape.ts';

export const vehicleClasses = ['car', 'van', 'light truck', 'heavy truck', 'bus', 'trailer', 'plant'] as const;
export const vehicleClass = z.enum(vehicleClasses, `must be one of ${vehicleClasses.join(', ')}`);

/** What an odometer or hour meter showed. */
export const odometer = z.strictObject({
  value: z.int('must be a whole number').min(0).max(9_999_999),
  unit: z.enum(['mi', 'km', 'h'], 'must be mi, km or h'),
});

/** The vehicle as found. */
export const vehicle = z.strictObject({
  /** as stamped; its plausibility is judged by a rule, not here */
  vin: z
    .string()
    .trim()
    .toUpperCase()
    .regex(/^[A-Z0-9-]{1,24}$/, 'must be letters and digits, at most 24')
    .optional(),
  plate: line.optional(),
  unitNumber: line.optional(),
  maker: line.optional(),
  model: line.optional(),
  year: z.int().min(1950, 'must be 1950 or later').max(2100).optional(),
  class: vehicleClass.optional(),
  /** true when used in commerce on public roads (windscreen rules of 49 CFR 393 apply in the United States) */
  commercial: z.boolean().default(true),
  /** highest permitted weight, from the plate; decides whether windscreen limits for commercial vehicles apply (from 4536 kg) */
  grossWeightKilograms: z.number().positive().max(200_000).optional(),
  odometer: odometer.optional(),
  systemVolts: z.union([z.literal(12), z.literal(24)], 'must be 12 or 24').optional(),
  drive: z.enum(['combustion', 'hybrid', 'electric'], 'must be combustion, hybrid or electric').optional(),
  start: z.enum(['key', 'button'], 'must be key or button').optional(),
  batteryIsolator: z.boolean().default(false),
  /** printed on the 12 V battery, or both batteries of a 24 V pair in series (the capacity of one) */
  batteryAmpereHours: z.number().positive().max(1000).optional(),
  /** the vehicle's own current asleep, where measured */
  asleepMilliamps: z.number().min(0).max(5000).optional(),
  /** how long it may stand between drives */
  standingDays: z.int().min(0).max(730).optional(),
});
export type Vehicle = z.infer<typeof vehicle>;

/** The state of the vehicle, before the work or after it. */
export const condition = z.strictObject({
  warningLamps: z.array(line).max(40).default([]),
  functionsNotWorking: z.array(line).max(40).default([]),
  /** at the battery, engine stopped */
  restVolts: z.number().min(0).max(60).optional(),
  /** at the battery, engine running or ready */
  chargingVolts: z.number().min(0).max(60).optional(),
  remark: line.optional(),
});
export type Condition = z.infer<typeof condition>;

/** A panel that was opened. */
export const panel = z.strictObject({
  name: line,
  fastener: line,
  tool: line.optional(),
  out: z.int().min(0).max(500),
  in: z.int().min(0).max(500).optional(),
  tightened: z.enum(['by hand', 'by torque', 'by power tool']).optional(),
});
