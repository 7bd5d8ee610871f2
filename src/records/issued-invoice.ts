import { z } from 'zod';
import { lineKind, taxCategories } from './book.ts';
import { jobId } from './job.ts';
import { language } from './language.ts';
import { electronicAddress } from './payer.ts';
import { address, date, decimal, line, minorUnits, paragraph, slug } from './shape.ts';

/** One line as charged. Amount = round(quantity x price / base quantity), half away from zero, less its discount. */
export const invoiceLine = z.strictObject({
  number: z.int().min(1),
  kind: lineKind,
  job: jobId.nullable(),
  what: line,
  /** how the figure came about, printed small */
  because: z.string(),
  quantity: decimal,
  unit: z.enum(['each', 'hour', 'minute', 'day', 'mi', 'km', 'metre', 'foot', 'set', 'visit']),
  /** in minor units with decimals ("72.5" cents) for `baseQuantity` of the unit */
  unitPriceMinorUnits: decimal,
  baseQuantity: decimal.default('1'),
  discountMinorUnits: minorUnits.default(0),
  discountBecause: z.string().default(''),
  netMinorUnits: minorUnits,
  /** where prices include tax: the figures agreed, of which those above are the part without it */
  includingTax: z
    .strictObject({ unitPriceMinorUnits: decimal, discountMinorUnits: minorUnits, amountMinorUnits: minorUnits })
    .optional(),
  taxCode: slug,
  incomeAccount: line,
});
export type InvoiceLine = z.infer<typeof invoiceLine>;

/** Allowance (discount) or charge on the whole document. */
export const documentAllowance = z.strictObject({
  charge: z.boolean().default(false),
  because: line,
  amountMinorUnits: minorUnits,
  taxCode: slug,
});

/** Tax of one group of lines with the same category and rate. */
export const taxGroup = z.strictObject({
  taxCode: slug,
  name: line,
  category: z.enum(taxCategories),
  /** combined rate */
  ratePercent: decimal,
  jurisdictions: z.array(z.strictObject({ name: line, ratePercent: decimal, taxMinorUnits: minorUnits })),
  reason: line.optional(),
  reasonCode: line.optional(),
  baseMinorUnits: minorUnits,
  taxMinorUnits: minorUnits,
});
export type TaxGroup = z.infer<typeof taxGroup>;

/** A party as it stood on the day of issue. */
export const invoiceParty = z.strictObject({
  id: line.optional(),
  name: line,
  address,
  contact: line.optional(),
  phone: line.optional(),
  email: line.optional(),
  taxIdentifier: line.optional(),
  taxRegistration: line.optional(),
  companyIdentifier: line.optional(),
  exemptionCertificate: line.optional(),
  electronicAddress: electronicAddress.optional(),
});
export type InvoiceParty = z.infer<typeof invoiceParty>;

/** An invoice or credit note: whole, immutable, understandable without any other file. Credit notes carry positive amounts (type 381). */
export const issuedInvoice = z.strictObject({
  schema: z.literal('keyout-invoice-1'),
  type: z.enum(['invoice', 'credit note']),
  /** "draft" until a number is given at issue */
  number: line,
  issued: date,
  due: date,
  supplied: z.strictObject({ from: date, to: date }),
  currency: z.string().regex(/^[A-Z]{3}$/),
  language,
  regime: z.enum(['none', 'sales tax', 'VAT', 'GST']),
  pricesIncludeTax: z.boolean(),
  seller: invoiceParty,
  payer: invoiceParty,
  payerId: slug,
  purchaseOrder: line.optional(),
  buyerReference: line.optional(),
  /** vehicles spoken of, in order, one section each */
  vehicles: z.array(
    z.strictObject({
      job: jobId,
      day: date,
      text: line,
      customer: line.optional(),
      place: line.optional(),
      purchaseOrder: line.optional(),
    }),
  ),
  lines: z.array(invoiceLine),
  allowances: z.array(documentAllowance),
  taxes: z.array(taxGroup),
  totals: z.strictObject({
    linesMinorUnits: minorUnits,
    allowancesMinorUnits: minorUnits,
    chargesMinorUnits: minorUnits,
    netMinorUnits: minorUnits,
    taxMinorUnits: minorUnits,
    grossMinorUnits: minorUnits,
    paidMinorUnits: minorUnits,
    /** BT-114, absent for 0: due = gross - paid + rounding; what is owed at issue is due + paid */
    roundingMinorUnits: minorUnits.optional(),
    dueMinorUnits: minorUnits,
  }),
  payment: z.strictObject({
    accountName: line.optional(),
    bank: line.optional(),
    iban: line.optional(),
    bic: line.optional(),
    accountNumber: line.optional(),
    routingNumber: line.optional(),
    link: line.optional(),
    reference: line,
    earlyPayment: z.strictObject({ percent: decimal, until: date, amountMinorUnits: minorUnits }).optional(),
    lateInterest: line.optional(),
    terms: paragraph.optional(),
  }),
  /** credit notes: which invoice, which of its lines (one for each line of the credit note, in its order), why */
  corrects: z
    .strictObject({
      number: line,
      issued: date,
      lines: z.array(z.int()),
      /** for each of `lines`, how much of its quantity is credited; "0" where it is credited by amount */
      quantities: z.array(decimal).optional(),
      because: line,
    })
    .optional(),
});
export type IssuedInvoice = z.infer<typeof issuedInvoice>;
