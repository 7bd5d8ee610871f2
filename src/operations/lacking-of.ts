import { structuredInvoice } from '../exports/structured/structured-invoice.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';

/**
 * Which field kept a document from having its structured file, in one sentence; null when it has one.
 * @param invoice the issued document
 */
export function lackingOf(invoice: IssuedInvoice): string | null {
  const structured = structuredInvoice(invoice);
  return 'lacks' in structured ? `${invoice.number} is issued without a structured invoice. ${structured.lacks}` : null;
}
