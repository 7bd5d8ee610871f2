import type { Book } from '../records/book.ts';
import type { InvoiceParty } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';
import type { PricingWords } from './pricing-words.ts';

/**
 * An object with one field, or none when the value is not given.
 * @param key the field
 * @param value its value
 */
export function given<Key extends string, Value>(key: Key, value: Value | undefined): { [K in Key]?: Value } {
  return value === undefined ? {} : ({ [key]: value } as { [K in Key]?: Value });
}

/**
 * The business as it stands on the day of issue.
 * @param book the business
 */
export function sellerOf(book: Book): InvoiceParty {
  const { name, address, phone, email, taxIdentifier, taxRegistration, companyIdentifier, electronicAddress } =
    book.business;
  return {
    name,
    address,
    ...given('phone', phone),
    ...given('email', email),
    ...given('taxIdentifier', taxIdentifier),
    ...given('taxRegistration', taxRegistration),
    ...given('companyIdentifier', companyIdentifier),
    ...given('electronicAddress', electronicAddress),
  };
}

/**
 * The payer as it stands on the day of issue.
 * @param payer the payer
 */
export function buyerOf(payer: Payer): InvoiceParty {
  const { contact, email, taxIdentifier, companyIdentifier, exemptionCertificate, electronicAddress } = payer;
  return {
    id: payer.id,
    name: payer.name,
    address: payer.address,
    ...given('contact', contact),
    ...given('email', email),
    ...given('taxIdentifier', taxIdentifier),
    ...given('companyIdentifier', companyIdentifier),
    ...given('exemptionCertificate', exemptionCertificate),
    ...given('electronicAddress', electronicAddress),
  };
}

// what the record has room for in one line
const lineLength = 200;

/**
 * The vehicle of a job in one line, as a person says it.
 * @param job the job
 * @param words the words of the document's language
 */
export function vehicleText(job: Job, words: PricingWords): string {
  const { year, maker, model, plate, unitNumber, vin } = job.vehicle;
  const name = [year, maker, model].filter((word) => word !== undefined).join(' ');
  const marks = [
    plate === undefined ? '' : words.plate(plate),
    unitNumber === undefined ? '' : words.unitNumber(unitNumber),
    vin === undefined ? '' : `VIN ${vin}`,
  ].filter((word) => word !== '');
  return ([name, ...marks].filter((word) => word !== '').join(', ') || job.id).slice(0, lineLength).trim();
}
