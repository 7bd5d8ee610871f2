import { Problem } from '../../problem.ts';
import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { ublXml } from './ubl-xml.ts';

/**
 * The structured file of a document, or what its data lack for one: never an invalid file.
 * @param invoice an issued invoice or credit note
 */
export function structuredInvoice(invoice: IssuedInvoice): { readonly xml: string } | { readonly lacks: string } {
  try {
    return { xml: ublXml(invoice) };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { lacks: `${error.what} (${error.where}) ${error.whatToDo}` };
  }
}
