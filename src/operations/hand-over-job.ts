import { recordHandedOver } from '../storage/hand-over.ts';
import type { OpenBook } from '../storage/open-book.ts';
import type { ExaminedJob } from './examine-job.ts';
import type { Moment } from './moment.ts';
import { renderHandover } from './render-handover.ts';
import { writeHandoverCover } from './write-covering-text.ts';

/**
 * Prints the handover sheet of a job that nothing stops, with its covering text, and notes it in the ledger.
 * @param book the open book
 * @param examined the job with all that follows from it
 * @param moment when
 * @returns the path of the sheet
 */
export async function handOverJob(
  book: OpenBook,
  examined: ExaminedJob,
  moment: Pick<Moment, 'now' | 'today'>,
): Promise<string> {
  const { pdf, digest } = await renderHandover(book, examined);
  writeHandoverCover(book, examined.facts);
  return recordHandedOver(book, {
    job: examined.job,
    digest,
    pdf,
    now: moment.now,
    day: moment.today,
  });
}
