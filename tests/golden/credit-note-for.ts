import { type IssuedInvoice, issuedInvoice } from '../../src/records/issued-invoice.ts';

/**
 * A credit note over some untaxed lines of an invoice, written down as a record: what a page says of it is looked at here,
 * not how it is worked out.
 */
export function creditNoteFor(
  invoice: IssuedInvoice,
  lineNumbers: readonly number[],
  issued: string,
  because: string,
): IssuedInvoice {
  const lines = invoice.lines.filter((line) => lineNumbers.includes(line.number));
  const net = lines.reduce((sum, line) => sum + line.netMinorUnits, 0);
  return issuedInvoice.parse({
    ...invoice,
    type: 'credit note',
    number: 'CRN-0001',
    issued,
    due: issued,
    lines: lines.map((line, place) => ({ ...line, number: place + 1 })),
    allowances: [],
    taxes: invoice.taxes
      .filter((group) => lines.some((line) => line.taxCode === group.taxCode))
      .map((group) => ({ ...group, baseMinorUnits: net })),
    totals: {
      linesMinorUnits: net,
      allowancesMinorUnits: 0,
      chargesMinorUnits: 0,
      netMinorUnits: net,
      taxMinorUnits: 0,
      grossMinorUnits: net,
      paidMinorUnits: 0,
      dueMinorUnits: net,
    },
    payment: { ...invoice.payment, reference: 'CRN-0001' },
    corrects: { number: invoice.number, issued: invoice.issued, lines: [...lineNumbers], because },
  });
}
