import { z } from 'zod';
import { line, millimetres } from './shape.ts';

/** Zones of a vehicle in which a device can sit; the plan on the sheet is drawn from them. */
export const zones = [
  'dash left',
  'dash centre',
  'dash right',
  'under dash left',
  'under dash right',
  'windscreen',
  'centre console',
  'overhead',
  'A-pillar left',
  'A-pillar right',
  'under seat left',
  'under seat right',
  'rear of cab',
  'load area',
  'engine bay',
  'battery box',
  'chassis',
  'roof',
  'machine cab',
] as const;
export const zone = z.enum(zones, `must be one of ${zones.join(', ')}`);
export type Zone = z.infer<typeof zone>;

/** Where the device sits and how it is held. */
export const placement = z.strictObject({
  zone,
  surface: line,
  fixing: z.enum(['screws', 'cable ties', 'adhesive pad', 'bracket', 'hook-and-loop', 'loose']),
  fixingPoints: z.int().min(0).max(20).optional(),
  firm: z.boolean().optional(),
  orientation: z.enum(['label up', 'label down', 'on edge', 'any']).optional(),
  above: z.enum(['open sky', 'glass', 'plastic', 'fabric', 'wood', 'metal', 'heated or coated glass']).optional(),
  airBagMillimetres: millimetres.optional(),
  inAirBagPath: z.boolean().optional(),
  inHeadStrikeArea: z.boolean().optional(),
  heatMillimetres: millimetres.optional(),
  expectedCelsiusMax: z.number().min(-60).max(200).optional(),
  /** the coldest that the place may become */
  expectedCelsiusMin: z.number().min(-60).max(200).optional(),
  wet: z.boolean().default(false),
  personMillimetres: millimetres.optional(),
  blocks: z.array(z.enum(['vent', 'view', 'control', 'seat travel', 'hatch'])).default([]),
  reachableWithTools: z.boolean().optional(),
  reachableByHand: z.boolean().optional(),
  /** windscreen only: lower edge of the device, below the upper edge of the area swept by the wipers */
  belowSweptTopMillimetres: millimetres.optional(),
  /** windscreen only: upper edge of the device, above the lower edge of the area swept by the wipers */
  aboveSweptBottomMillimetres: millimetres.optional(),
  /** windscreen only, for antennas and the like: lower edge of the device, below the upper edge of the glass */
  belowGlassTopMillimetres: millimetres.optional(),
  /** windscreen only: whether the wipers pass over the place */
  inSweptArea: z.boolean().optional(),
  inSightLine: z.boolean().optional(),
  remark: line.optional(),
});
export type Placement = z.infer<typeof placement>;

/** How the harness runs. */
export const harness = z.strictObject({
  loomed: z.boolean().optional(),
  tied: z.boolean().optional(),
  tieIntervalMillimetres: millimetres.optional(),
  slack: z.enum(['right', 'tight', 'loose']).optional(),
  touches: z.array(z.enum(['sharp edge', 'hot part', 'moving part', 'fuel line'])).default([]),
  tiedTo: z
    .array(
      z.enum([
        'vehicle harness',
        'bracket',
        'steering',
        'pedal',
        'brake line',
        'restraint wiring',
        'high-voltage cable',
        'fuel line',
      ]),
    )
    .default([]),
  bendRadiusTimesDiameter: z.number().min(0).max(200).optional(),
  lengthMillimetres: millimetres.optional(),
});
export type Harness = z.infer<typeof harness>;
