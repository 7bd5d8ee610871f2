import { effectiveRates } from '../pricing/effective-rates.ts';
import { orderOnDay } from '../pricing/flat-rate.ts';
import { makeInvoice } from '../pricing/make-invoice.ts';
import { priceJob } from '../pricing/price-job.ts';
import type { Wording } from '../pricing/pricing-words.ts';
import { Problem } from '../problem.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import { documentLanguage } from '../records/language.ts';
import type { Payer } from '../records/payer.ts';
import type { RateCard } from '../records/rate-card.ts';
import { jobsOnDay, readJob } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { wordsIn } from '../words/words-in.ts';
import { payerOfJob } from './payer-of-job.ts';
import { tripOfJob } from './trip-of-job.ts';

/** The language of a payer's invoices, and what their lines say in it. */
function wordingFor(book: OpenBook, payer: Payer): Wording {
  const language = documentLanguage(payer, book.book);
  return { language, words: wordsIn(language).pricing };
}

function pricedLines(book: OpenBook, job: Job, payer: Payer, rates: RateCard) {
  const trip = tripOfJob(book, job);
  const samePayer = jobsOnDay(book, job.day).filter((each) => each.identity.payer === payer.id);
  return priceJob({
    job,
    trip,
    tripJobs: (trip?.jobs ?? []).map((each) => readJob(book, each.job)),
    rates,
    book: book.book,
    wording: wordingFor(book, payer),
    orderOnDay: orderOnDay(job, samePayer, rates),
  });
}

/**
 * The invoice for some jobs of one payer, not yet numbered.
 * @param book the open book
 * @param jobs jobs of one payer
 * @param issued the day of issue
 * @throws Problem when a job names no known payer
 */
export async function draftInvoice(book: OpenBook, jobs: readonly Job[], issued: string): Promise<IssuedInvoice> {
  const first = jobs[0];
  if (first === undefined) throw new Problem('There is nothing to bill.', 'keyout bill', 'Name a job.', 2);
  const payer = payerOfJob(book, first);
  const rates = effectiveRates(book.rates, payer);
  const priced = [];
  for (const job of jobs) priced.push({ job, lines: pricedLines(book, job, payer, rates) });
  return makeInvoice({
    number: 'draft',
    issued,
    book: book.book,
    payer,
    wording: wordingFor(book, payer),
    jobs: priced,
    documentDiscountPercent: rates.documentDiscountPercent,
    documentDiscountBecause: rates.documentDiscountBecause,
  });
}
