import { type Book, book } from '../records/book.ts';

/**
 * The book of the examples, of a business in some country. Invented, proves nothing.
 * @param country two capital letters, ISO 3166-1 alpha-2
 */
export function bookIn(country: string): Book {
  return book.parse({
    schema: 'keyout-book-1',
    business: {
      name: 'Example fitting',
      installer: 'An Example',
      address: { lines: ['1 Example Road'], city: 'Example', country },
    },
    currency: 'USD',
    timeZone: 'UTC',
    tax: { regime: 'none' },
    numbering: { invoice: { prefix: 'INV-' }, creditNote: { prefix: 'CRN-' } },
    payment: {},
  });
}
