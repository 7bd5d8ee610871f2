import { Problem } from '../problem.ts';
import { millionths, percentOfMinorUnits } from '../quantities/decimal.ts';
import { shareOut } from '../quantities/share-out.ts';
import type { InvoiceLine, IssuedInvoice } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import type { Setting } from './setting.ts';

type Allowance = IssuedInvoice['allowances'][number];

function overCodes(bases: ReadonlyMap<string, number>, percent: string, because: string): readonly Allowance[] {
  const total = percentOfMinorUnits(
    [...bases.values()].reduce((sum, base) => sum + base, 0),
    percent,
  );
  const shares = shareOut(
    total,
    [...bases.values()].map((base) => BigInt(Math.max(0, base))),
  );
  return [...bases.keys()]
    .map((taxCode, index) => ({
      charge: false,
      because: because.slice(0, 200).trim(),
      amountMinorUnits: shares[index] ?? 0,
      taxCode,
    }))
    .filter((each) => each.amountMinorUnits !== 0);
}

function basesOf(lines: readonly InvoiceLine[], allowances: readonly Allowance[]): ReadonlyMap<string, number> {
  const bases = new Map<string, number>();
  for (const line of lines) bases.set(line.taxCode, (bases.get(line.taxCode) ?? 0) + line.netMinorUnits);
  for (const each of allowances) bases.set(each.taxCode, (bases.get(each.taxCode) ?? 0) - each.amountMinorUnits);
  return bases;
}

function percentOn(job: Job): string {
  const percent = job.discountPercent ?? '0';
  if (Number(percent) < 0 || Number(percent) > 100)
    throw new Problem(
      `A discount of ${percent} % cannot be given.`,
      `${job.id}, discountPercent`,
      'Give a number between 0 and 100.',
    );
  return percent;
}

/**
 * Discounts on the document: what was agreed on the spot for a job, on that job's lines; then the payer's, on what is left.
 * Each is shared over the tax codes of what it is on, by largest remainder (EN 16931-1 BG-20 wants one tax for each).
 * @param lines lines of the document
 * @param jobs its jobs
 * @param percent the payer's discount, decimal text
 * @param because why
 * @param setting in which words
 * @throws Problem when a job's discount is not between 0 and 100 percent
 */
export function documentDiscounts(
  lines: readonly InvoiceLine[],
  jobs: readonly Job[],
  percent: string,
  because: string,
  { words, decimal }: Setting,
): IssuedInvoice['allowances'] {
  const ofJobs = jobs.flatMap((job) => {
    const own = percentOn(job);
    if (millionths(own) === 0n) return [];
    const bases = basesOf(
      lines.filter((line) => line.job === job.id),
      [],
    );
    return overCodes(bases, own, words.offJob(decimal(own), job.id, job.discountBecause ?? words.asAgreed));
  });
  if (millionths(percent) === 0n) return ofJobs;
  return [...ofJobs, ...overCodes(basesOf(lines, ofJobs), percent, words.off(decimal(percent), because))];
}
