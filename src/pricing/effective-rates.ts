import type { Payer } from '../records/payer.ts';
import type { RateCard } from '../records/rate-card.ts';

/** The general rate card with a payer's entries laid over it; the payer's flat rates stand apart, since they outrank the others. */
export type RatesThatCount = RateCard & { readonly payerFlatRates?: RateCard['flatRates'] };

/**
 * The rate card that counts for a payer: the general one with the payer's entries laid over it, entry by entry.
 * A payer's entry counts on the days for which it is dated; on other days, and where it has none, the general entry does.
 * A payer's flat rate for a kind of visit counts for every vehicle and device it names, also where the general card has a
 * narrower price: the contract with the payer outranks the list. To agree that something is free, name it with price 0.
 * @param rates the general rate card
 * @param payer the payer
 */
export function effectiveRates(rates: RateCard, payer: Payer): RatesThatCount {
  const own = payer.rates ?? {};
  const because = own.documentDiscountBecause ?? rates.documentDiscountBecause;
  return {
    schema: rates.schema,
    flatRates: rates.flatRates,
    ...(own.flatRates === undefined ? {} : { payerFlatRates: own.flatRates }),
    hourly: [...rates.hourly, ...(own.hourly ?? [])],
    waiting: [...rates.waiting, ...(own.waiting ?? [])],
    callOut: [...rates.callOut, ...(own.callOut ?? [])],
    travel: [...rates.travel, ...(own.travel ?? [])],
    extras: [...rates.extras, ...(own.extras ?? [])],
    parts: [...rates.parts, ...(own.parts ?? [])],
    partsMarkUpPercent: own.partsMarkUpPercent ?? rates.partsMarkUpPercent,
    wastedVisit: [...rates.wastedVisit, ...(own.wastedVisit ?? [])],
    surcharges: [...rates.surcharges, ...(own.surcharges ?? [])],
    ordinaryHours: own.ordinaryHours ?? rates.ordinaryHours,
    weekendDays: own.weekendDays ?? rates.weekendDays,
    holidays: [...rates.holidays, ...(own.holidays ?? [])],
    lineDiscounts: [...rates.lineDiscounts, ...(own.lineDiscounts ?? [])],
    documentDiscountPercent: own.documentDiscountPercent ?? rates.documentDiscountPercent,
    ...(because === undefined ? {} : { documentDiscountBecause: because }),
  };
}

/**
 * The entry valid on a day: the last of those whose dates include it, or null.
 * @param entries dated entries
 * @param day the job's day
 */
export function validOn<Entry extends { readonly from?: string | undefined; readonly to?: string | undefined }>(
  entries: readonly Entry[],
  day: string,
): Entry | null {
  return (
    entries.findLast(
      (entry) => (entry.from === undefined || entry.from <= day) && (entry.to === undefined || day <= entry.to),
    ) ?? null
  );
}
