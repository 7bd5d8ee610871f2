import { Problem } from '../problem.ts';
import { millionths } from '../quantities/decimal.ts';
import type { Book, LineKind, TaxCode } from '../records/book.ts';
import type { Payer } from '../records/payer.ts';
import { combinedRate } from './compute-totals.ts';
import { validOn } from './effective-rates.ts';
import type { PricingWords } from './pricing-words.ts';

function named(id: string | undefined, book: Book, day: string): TaxCode | null {
  return validOn(
    book.tax.codes.filter((each) => each.id === id),
    day,
  );
}

// where the book gives no words for AE, K, G and O, what the category means by itself (EN 16931-1, BR-AE-10, BR-IC-10, BR-G-10, BR-O-10)
function withReason(code: TaxCode, words: PricingWords): TaxCode {
  const where = `book.json, tax.codes "${code.id}"`;
  const rate = code.jurisdictions.reduce((sum, each) => sum + millionths(each.ratePercent), 0n);
  if (code.category !== 'S' && rate !== 0n)
    throw new Problem(
      `A tax code of category ${code.category} has a rate of ${combinedRate(code)} %; only category S has one.`,
      `${where}, jurisdictions`,
      'Use category S, or take its rates away.',
    );
  if (code.category === 'S' || code.category === 'Z') return code;
  const reason = code.reason ?? words.taxReasons[code.category];
  if (reason === undefined)
    throw new Problem(
      `The tax code "${code.id}" is exempt (category ${code.category}) and says no reason, which an invoice must print.`,
      `${where}, reason`,
      'Write the reason as it should be printed, such as the small-business rule or the section of the law.',
    );
  return { ...code, reason };
}

function certified(code: TaxCode, certificate: string, { certificate: say }: PricingWords): TaxCode {
  const words = say(certificate);
  const reason = code.reason ?? '';
  if (reason.includes(certificate)) return code;
  const both = `${reason.slice(0, 198 - words.length)}; ${words}`;
  return { ...code, reason: reason === '' || words.length > 190 ? words.slice(0, 200) : both };
}

/**
 * The tax code of a kind of line for a payer on a day, with the reason that its category must print.
 * The payer's own code counts first, then the kind's, then the default. Under sales tax, a payer with an exemption
 * certificate and no code of its own is charged no tax on what is taxable, for the reason of the certificate.
 * Which code is right in law is for the book to say, not for this program.
 * @param kind the kind of line
 * @param where the business, the payer, the day of the work (which the code must be valid on) and the document's words
 * @throws Problem when no code is given, or one lacks what its category needs
 */
export function taxCodeOf(
  kind: LineKind,
  where: { readonly book: Book; readonly payer: Payer; readonly day: string; readonly words: PricingWords },
): TaxCode {
  const { book, payer, day, words } = where;
  const { tax } = book;
  const id = payer.taxCode ?? tax.lines[kind] ?? tax.lines.default;
  if (tax.regime === 'none') {
    const code = named(id, book, day);
    if (code?.category === 'O' || code?.category === 'E') return withReason(code, words);
    return withReason({ id: 'untaxed', name: words.noTax, category: 'O', jurisdictions: [] }, words);
  }
  const code = named(id, book, day);
  if (code === null)
    throw payer.taxCode === undefined
      ? new Problem(
          `No tax code is given for lines of the kind "${kind}" on ${day}.`,
          'book.json, tax.lines',
          `Name one of the codes in tax.codes for "${kind}" or for "default", valid on that day.`,
        )
      : new Problem(
          `The payer's tax code "${payer.taxCode}" is none of the book's on ${day}.`,
          `payers/${payer.id}.json, taxCode`,
          'Name one of the codes in book.json, tax.codes, that is valid on that day.',
        );
  if ((code.category === 'AE' || code.category === 'K') && payer.taxIdentifier === undefined)
    throw new Problem(
      `${payer.name} is billed without tax (category ${code.category}), for which its tax identifier must be printed.`,
      `payers/${payer.id}.json, taxIdentifier`,
      'Add the identifier with its country prefix, or another tax code for this payer.',
    );
  const certificate = payer.exemptionCertificate;
  if (tax.regime !== 'sales tax' || certificate === undefined) return withReason(code, words);
  if (code.category === 'E') return certified(code, certificate, words);
  if (code.category !== 'S' || payer.taxCode !== undefined) return withReason(code, words);
  return certified(
    { id: `${code.id.slice(0, 56)}-exempt`, name: words.exempt, category: 'E', jurisdictions: [] },
    certificate,
    words,
  );
}

const same = (one: TaxCode, other: TaxCode) =>
  one.category === other.category &&
  one.reason === other.reason &&
  one.name === other.name &&
  JSON.stringify(one.jurisdictions) === JSON.stringify(other.jurisdictions);

/**
 * The codes of one document, each under a name of its own: where a code has two rates on one document, because the work
 * was done on both sides of a change, the later found is named after its rate ("parts-8-25"), so that neither is lost.
 */
export function collectCodes(): { readonly add: (code: TaxCode) => string; readonly all: () => readonly TaxCode[] } {
  const codes = new Map<string, TaxCode>();
  const add = (code: TaxCode): string => {
    const byRate = `${code.id.slice(0, 48)}-${combinedRate(code).replace('.', '-')}`;
    for (let index = 0; ; index += 1) {
      const id = index === 0 ? code.id : index === 1 ? byRate : `${byRate}-${index}`;
      const known = codes.get(id);
      if (known !== undefined && !same(known, code)) continue;
      codes.set(id, { ...code, id });
      return id;
    }
  };
  return { add, all: () => [...codes.values()] };
}
