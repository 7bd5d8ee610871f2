import { z } from 'zod';
import { gauge } from './probe-point.ts';
import { line, millimetres, slug } from './shape.ts';

/** What the maker of a device says it needs. */
export const deviceProfile = z
  .strictObject({
    id: slug,
    name: line,
    maker: line.optional(),
    supplyVoltsMin: z.number().min(0).max(60),
    supplyVoltsMax: z.number().min(0).max(60),
    /** volts it must still see while the engine cranks; absent when it may restart */
    crankVoltsMin: z.number().min(0).max(60).optional(),
    ignitionVoltsMin: z.number().min(0).max(60).default(7),
    awakeMilliamps: z.number().min(0).max(20_000),
    asleepMilliamps: z.number().min(0).max(5_000),
    leadGauge: gauge,
    leadLengthMillimetres: millimetres,
    fuseAmperes: z.number().positive().max(30),
    /** leads that need a fuse of their own */
    fusedLeads: z.array(z.enum(['supply', 'ignition'])).default(['supply']),
    /** what its lamp shows when all is well, in the maker's words */
    lampWhenWell: line.optional(),
    hasImei: z.boolean().default(false),
    hasAntenna: z.boolean().default(true),
    transmits: z.boolean().default(true),
    personMillimetresMin: millimetres.default(200),
    fixingPointsMin: z.int().min(0).max(20).default(2),
    operatingCelsiusMin: z.number().min(-60).max(0).default(-20),
    operatingCelsiusMax: z.number().min(30).max(150).default(60),
    sealedAgainstWater: z.boolean().default(false),
    orientation: z.enum(['label up', 'label down', 'on edge', 'any']).default('any'),
    windscreen: z.boolean().default(false),
    /** on a windscreen: whether 49 CFR 393.5 counts it as vehicle safety technology (positioning, cameras, transponders); absent: yes */
    vehicleSafetyTechnology: z.boolean().optional(),
    /** least distance from heater ducts, exhaust and other hot parts; absent: 100 mm */
    heatMillimetresMin: millimetres.optional(),
  })
  .refine((profile) => profile.supplyVoltsMin < profile.supplyVoltsMax, {
    path: ['supplyVoltsMax'],
    message: 'must be above supplyVoltsMin',
  });
export type DeviceProfile = z.infer<typeof deviceProfile>;

export const deviceProfiles = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('keyout-devices-1', 'must be "keyout-devices-1"'),
  devices: z.array(deviceProfile).min(1, 'needs at least one device'),
});
export type DeviceProfiles = z.infer<typeof deviceProfiles>;
