import { Problem } from '../problem.ts';
import { decimalScale, decimalText, millionths } from '../quantities/decimal.ts';
import { divideRounded } from '../quantities/divide-rounded.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { validOn } from './effective-rates.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import type { Setting } from './setting.ts';

function atCost(
  costMinorUnits: number,
  markUpPercent: string,
  { words, decimal }: Setting,
): { readonly price: string; readonly because: string } {
  const percent = millionths(markUpPercent);
  if (percent === 0n) return { price: String(costMinorUnits), because: words.atCost };
  // the price keeps its fractions of a cent: rounding belongs to the line, or a hundred pieces would be a cent off each
  const price = divideRounded(BigInt(costMinorUnits) * (100n * decimalScale + percent), 100n);
  return { price: decimalText(price), because: words.costPlus(decimal(decimalText(percent))) };
}

/**
 * Parts used: at the price in the rate card, or at cost with the mark-up.
 * @param job the job
 * @param rates the rate card that counts
 * @param setting in which words
 * @throws Problem naming the part that the rate card lacks, or that has neither a price there nor a cost on the job
 */
export function partLines(job: Job, rates: RateCard, setting: Setting): readonly PricedLine[] {
  return (job.parts ?? []).map((part, index) => {
    const where = `${job.id}, parts[${index + 1}]`;
    const listed =
      part.part === undefined
        ? null
        : validOn(
            rates.parts.filter((each) => each.id === part.part),
            job.day,
          );
    const unit = part.unit;
    if (listed !== null)
      return {
        ...oneOf('parts', part.what, listed.priceMinorUnits, setting.words.listPrice, part.quantity),
        unit,
      };
    if (part.unitCostMinorUnits === undefined)
      throw new Problem(
        part.part === undefined
          ? `"${part.what}" has no price: neither a part of the rate card nor a cost is named.`
          : `The rate card has no part "${part.part}" on ${job.day}.`,
        part.part === undefined ? `${where}.unitCostMinorUnits` : `${where}.part`,
        'Add it to rates.json, or give what one cost on the job (0 if it was free).',
      );
    const { price, because } = atCost(part.unitCostMinorUnits, rates.partsMarkUpPercent, setting);
    return { ...oneOf('parts', part.what, price, because, part.quantity), unit };
  });
}
