import { Problem } from '../problem.ts';
import { changeBook } from '../storage/change-book.ts';
import type { OpenBook } from '../storage/open-book.ts';
import {
  likePayment,
  type NewPayment,
  type RecordedPayment,
  readPayments,
  recordPayment,
} from '../storage/record-payment.ts';
import { drawFiles } from './draw-files.ts';

/**
 * Records a payment with no other writer in between.
 * @param book the open book
 * @param compose makes the payment from the book as it then stands
 * @param by the moment (UTC), and whether a payment like one recorded already is meant
 * @throws Problem when a payment like it was recorded and no repetition is meant
 */
export async function takePayment(
  book: OpenBook,
  compose: () => NewPayment,
  by: { readonly now: string; readonly mayRepeat: boolean },
): Promise<RecordedPayment> {
  return changeBook(book, { now: by.now, draw: drawFiles(book) }, async (changing) => {
    const payment = compose();
    const like = payment.reverses === undefined ? likePayment(readPayments(book), payment) : null;
    if (like !== null && !by.mayRepeat)
      throw new Problem(
        `${like.payment}, just recorded, looks like the same payment.`,
        'keyout paid',
        'If it is another payment, say so with --again.',
        1,
      );
    return recordPayment(changing, payment);
  });
}
