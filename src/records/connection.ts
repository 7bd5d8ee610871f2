import { z } from 'zod';
import { gauge } from './probe-point.ts';
import { pointName } from './reading.ts';
import { line, millimetres } from './shape.ts';

/** The three leads of the devices that are fitted. */
export const deviceLeads = ['supply', 'ignition', 'ground'] as const;
export const deviceLead = z.enum(deviceLeads, `must be one of ${deviceLeads.join(', ')}`);
export type DeviceLead = z.infer<typeof deviceLead>;

/** Ways in which a lead is joined to a vehicle wire. */
export const spliceMethods = [
  'wrapped tap',
  'soldered tap',
  'crimped butt splice',
  'sealed crimp splice',
  'ring terminal',
  'plug-in fuse tap',
  'insulation-displacing tap',
  'connector pin',
  'twist only',
] as const;
export const spliceMethod = z.enum(spliceMethods, `must be one of ${spliceMethods.join(', ')}`);
export type SpliceMethod = z.infer<typeof spliceMethod>;

/** A fuse set into a device lead. */
export const leadFuse = z.strictObject({
  ratingAmperes: z.number().positive('must be more than zero').max(100),
  /** along the lead, from the joint with the vehicle wire */
  distanceMillimetres: millimetres,
  tapedAndTied: z.boolean().optional(),
});

/** One lead of the device joined to the vehicle. */
export const connection = z.strictObject({
  lead: deviceLead,
  /** the probe point joined to; a ground lead may name none and stand on the job's ground point */
  point: pointName.optional(),
  method: spliceMethod,
  stripped: z.enum(['clean', 'strands nicked', 'strands cut']).optional(),
  nickedStrands: z.int().min(0).max(200).optional(),
  covered: z.enum(['tape', 'heat-shrink', 'sealed sleeve', 'closed housing', 'not covered']).optional(),
  tapeMillimetres: millimetres.optional(),
  tied: z.boolean().optional(),
  /** a light tug by hand held */
  tugHeld: z.boolean().optional(),
  /** true where water, salt or washing reaches the joint */
  wetPlace: z.boolean().default(false),
  /** along the bundle, to the nearest other joint */
  nextJointMillimetres: millimetres.optional(),
  fuse: leadFuse.optional(),
  /** the lead used, where it is not the device's own */
  gauge: gauge.optional(),
  lengthMillimetres: millimetres.optional(),
  note: line.optional(),
});
export type Connection = z.infer<typeof connection>;

/** The ground point of the device. */
export const groundPoint = z.strictObject({
  kind: z.enum(['factory ground stud', 'chassis bolt', 'existing ground wire', 'battery negative', 'drilled screw']),
  where: line,
  bareMetal: z.boolean().optional(),
  shakeproof: z.boolean().optional(),
  /** drop between the device's ground lead and battery negative, with the current that flowed */
  dropMillivolts: z.int().min(-60_000).max(60_000).optional(),
  testMilliamps: z.int().min(0).max(100_000).optional(),
});
