import type { Payer } from '../records/payer.ts';
import type { RateCard } from '../records/rate-card.ts';

/**
 * The rate card that counts for a payer: where it has entries of its own, they replace the general ones.
 * @param rates the general rate card
 * @param payer the payer
 */
export function effectiveRates(rates: RateCard, payer: Payer): RateCard {
  const own = Object.fromEntries(
    Object.entries(payer.rates ?? {}).filter(
      ([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0),
    ),
  );
  return { ...rates, ...ownGiven(own, payer) };
}

const fillerDefaults: Readonly<Record<string, string>> = {
  partsMarkUpPercent: '0',
  documentDiscountPercent: '0',
  ordinaryHours: '{"start":"07:00","end":"18:00"}',
};

// a default that zod fills in is not a price the payer agreed: it must not replace the general one
function ownGiven(own: Readonly<Record<string, unknown>>, _payer: Payer): Partial<RateCard> {
  return Object.fromEntries(
    Object.entries(own).filter(
      ([name, value]) => fillerDefaults[name] !== (typeof value === 'string' ? value : JSON.stringify(value)),
    ),
  ) as Partial<RateCard>;
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
