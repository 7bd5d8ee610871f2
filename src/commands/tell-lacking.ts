import { structuredInvoice } from '../exports/structured/structured-invoice.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { World } from './command.ts';

/**
 * Says which field kept a document from having its structured file, if one did.
 * @param invoice the issued document
 * @param world the outside world
 */
export function tellLacking(invoice: IssuedInvoice, world: World): void {
  const structured = structuredInvoice(invoice);
  if ('lacks' in structured)
    world.tell(`${invoice.number} is issued without a structured invoice. ${structured.lacks}`);
}
