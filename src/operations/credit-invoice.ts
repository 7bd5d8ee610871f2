import { makeCreditNote } from '../pricing/make-credit-note.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import { changeBook } from '../storage/change-book.ts';
import { issueDocument } from '../storage/issue-document.ts';
import { creditNotesOf, type IssuedDocument } from '../storage/issued.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { wordsIn } from '../words/words-in.ts';
import { drawFiles } from './draw-files.ts';
import type { Moment } from './moment.ts';
import { writeInvoiceCover } from './write-covering-text.ts';

/** What is to be credited, and why. */
export type CreditRequest = {
  readonly invoice: IssuedInvoice;
  readonly lines: Parameters<typeof makeCreditNote>[0]['lines'];
  readonly because: string;
};

/**
 * The credit note over an invoice or some of its lines, not yet numbered.
 * @param book the open book
 * @param request what is credited, and why
 * @param day the day of issue
 * @throws Problem when more is credited than is left of a line
 */
export function draftCredit(book: OpenBook, { invoice, lines, because }: CreditRequest, day: string): IssuedInvoice {
  const earlier = creditNotesOf(book, invoice.number);
  const { language } = invoice;
  const wording = { language, words: wordsIn(language).pricing };
  return makeCreditNote({ invoice, lines, number: 'draft', issued: day, because, wording, earlier });
}

/**
 * Issues the credit note over an invoice or some of its lines, with its covering text.
 * @param book the open book
 * @param request what is credited, and why
 * @param moment when, and in whose number series
 */
export async function creditInvoice(book: OpenBook, request: CreditRequest, moment: Moment): Promise<IssuedDocument> {
  const made = await changeBook(book, { now: moment.now, draw: drawFiles(book) }, async (changing) =>
    issueDocument(changing, { draft: draftCredit(book, request, moment.today), van: moment.van }),
  );
  writeInvoiceCover(book, made.invoice);
  return made;
}
