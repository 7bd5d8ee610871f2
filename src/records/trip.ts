import { z } from 'zod';
import { jobId } from './job.ts';
import { date, decimal, line, minutes, price } from './shape.ts';

/** A day's travel that one or more jobs share. */
export const trip = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('keyout-trip-1', 'must be "keyout-trip-1"'),
  day: date,
  from: line.optional(),
  distance: decimal.refine((text) => Number(text) >= 0, 'must not be negative'),
  unit: z.enum(['mi', 'km']),
  travelMinutes: minutes,
  tollsMinorUnits: price.default(0),
  parkingMinorUnits: price.default(0),
  /** how the trip is shared over its jobs */
  shareBy: z.enum(['equally', 'time', 'distance'], 'must be equally, time or distance').default('equally'),
  /** the jobs that share it, with each one's distance from the base where shared by distance */
  jobs: z.array(z.strictObject({ job: jobId, distance: decimal.optional() })).min(1, 'needs at least one job'),
});
export type Trip = z.infer<typeof trip>;
