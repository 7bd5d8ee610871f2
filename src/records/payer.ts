import { z } from 'zod';
import { language } from './language.ts';
import { payerRates } from './rate-card.ts';
import { address, line, slug } from './shape.ts';

/** A place where electronic invoices are received (EN 16931 BT-34, BT-49). */
export const electronicAddress = z.strictObject({
  /** code of the EAS list, such as "0088" (GLN) or "9930" (German VAT number) */
  scheme: z.string().regex(/^[A-Z0-9]{2,4}$/, 'must be a code of the EAS list, such as "0088"'),
  identifier: line,
});

/** Whoever pays: not always the vehicle's owner. */
export const payer = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('keyout-payer-1', 'must be "keyout-payer-1"'),
  id: slug,
  name: line,
  address,
  contact: line.optional(),
  email: line.optional(),
  language: language.optional(),
  /** VAT or GST number, with country prefix (BT-48) */
  taxIdentifier: line.optional(),
  /** company register number (BT-47) */
  companyIdentifier: line.optional(),
  electronicAddress: electronicAddress.optional(),
  buyerReference: line.optional(),
  /** a tax code of the book applied to every line (exempt, reverse charge) */
  taxCode: slug.optional(),
  exemptionCertificate: line.optional(),
  invoicePer: z.enum(['vehicle', 'payer']).default('vehicle'),
  needsPurchaseOrder: z.boolean().default(false),
  needsPhotographs: z.array(z.string()).default([]),
  termsDays: z.int().min(0).max(365).optional(),
  /** laid over rates.json entry by entry: what is not named here stays as it is there */
  rates: payerRates.optional(),
});
export type Payer = z.infer<typeof payer>;
