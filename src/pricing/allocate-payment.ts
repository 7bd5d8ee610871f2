import type { OpenDocument } from './aged-balances.ts';

/** One part of a payment: which invoice, how much. */
export type Allocation = { readonly invoice: string; readonly amountMinorUnits: number };

/** What becomes of a payment; `rest` is kept as the payer's credit. */
export type AllocatedPayment = { readonly allocations: readonly Allocation[]; readonly restMinorUnits: number };

/**
 * Spreads a payment over invoices: first the amounts that were named, then what is open of the others, oldest due date first.
 * @param amountMinorUnits the money, more than zero
 * @param named the invoices in question, each with the amount named for it or null
 * @param open those invoices with their balances
 * @returns allocations in the order of due dates, never more than an invoice's balance, and what is left over
 */
export function allocatePayment(
  amountMinorUnits: number,
  named: readonly { readonly invoice: string; readonly amountMinorUnits: number | null }[],
  open: readonly OpenDocument[],
): AllocatedPayment {
  const ordered = [...open].sort((one, other) =>
    `${one.due} ${one.issued} ${one.number}` < `${other.due} ${other.issued} ${other.number}` ? -1 : 1,
  );
  const fixed = new Map(
    named.flatMap((each) => (each.amountMinorUnits === null ? [] : [[each.invoice, each.amountMinorUnits]])),
  );
  let rest = [...fixed.values()].reduce((left, each) => left - each, amountMinorUnits);
  const allocations: Allocation[] = [];
  for (const each of ordered) {
    const part = fixed.get(each.number) ?? Math.max(0, Math.min(rest, each.balanceMinorUnits));
    if (!fixed.has(each.number)) rest -= part;
    if (part !== 0) allocations.push({ invoice: each.number, amountMinorUnits: part });
  }
  return { allocations, restMinorUnits: rest };
}

/**
 * Moves credit off invoices that were paid or credited beyond what they charged, oldest first; what those do not give comes
 * from payments that no invoice used up.
 * @param amountMinorUnits how much credit is used, at most what the payer has
 * @param overpaid the payer's invoices whose balance is below zero
 */
export function drawOnCredit(amountMinorUnits: number, overpaid: readonly OpenDocument[]): readonly Allocation[] {
  let wanted = amountMinorUnits;
  const allocations: Allocation[] = [];
  for (const each of overpaid) {
    const part = Math.min(wanted, Math.max(0, -each.balanceMinorUnits));
    if (part > 0) allocations.push({ invoice: each.number, amountMinorUnits: -part });
    wanted -= part;
  }
  return allocations;
}
