import type { Book } from '../records/book.ts';
import { languages } from '../records/language.ts';
import { type Payer, payer as payerRecord } from '../records/payer.ts';
import { something, whole } from './answers.ts';
import { askAddress } from './ask-address.ts';
import { languageNames } from './language-names.ts';
import type { Ask } from './question.ts';

/** Latin letters that are no letter with a mark: how they are written without them. */
const plainLetters = new Map([
  ['ø', 'o'],
  ['æ', 'ae'],
  ['œ', 'oe'],
  ['ß', 'ss'],
  ['đ', 'd'],
  ['ð', 'd'],
  ['ł', 'l'],
  ['þ', 'th'],
  ['ı', 'i'],
]);

/** A file name for a payer made from its name, not one of those taken. */
export function shortName(name: string, taken: readonly string[]): string {
  const plain =
    name
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .replace(/[^a-z0-9]/g, (character) => plainLetters.get(character) ?? '-')
      .replace(/-+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 40)
      .replace(/-+$/, '') || 'payer';
  for (let count = 1; ; count += 1) {
    const tried = count === 1 ? plain : `${plain}-${count}`;
    if (!taken.includes(tried)) return tried;
  }
}

/**
 * Whoever pays: new, or changed.
 * @param ask how a prompt reaches a person
 * @param taken short names in use
 * @param current the payer as it is, or null for a new one
 * @param book the business, whose country, terms and tax codes are the usual answers
 */
export async function askPayer(
  ask: Ask,
  taken: readonly string[],
  current: Payer | null,
  book: Pick<Book, 'business' | 'payment' | 'tax'>,
): Promise<Payer> {
  const name = await ask.text('Name of the payer', current?.name ?? '', something);
  const id = current?.id ?? shortName(name, taken);
  const address = await askAddress(ask, current?.address ?? null, book.business.address.country);
  const contact = await ask.text('For the attention of (empty for nobody)', current?.contact ?? '');
  const email = await ask.text('E-mail for invoices', current?.email ?? '');
  const terms = await ask.text(
    'Days to pay',
    String(current?.termsDays ?? book.payment.termsDays),
    (text) => whole(text) ?? (Number(text) > 365 ? 'At most 365 days.' : null),
  );
  const needsPurchaseOrder = await ask.confirm(
    'Does it want a purchase order on each invoice?',
    current?.needsPurchaseOrder ?? false,
  );
  const invoicePer = await ask.choose('One invoice for each', ['vehicle', 'payer'], current?.invoicePer ?? 'vehicle');
  const taxIdentifier =
    book.tax.regime === 'VAT' || book.tax.regime === 'GST'
      ? await ask.text(`Its ${book.tax.regime} number (empty for none)`, current?.taxIdentifier ?? '')
      : '';
  const asBook = 'as the book says';
  const language = await ask.choose(
    'Language of its documents',
    [asBook, ...languages.map((value) => ({ value, name: languageNames.of(value) ?? value }))],
    current?.language ?? asBook,
  );
  const codes = book.tax.codes.map((code) => ({ value: code.id, name: code.name }));
  const asUsual = 'as the kind of line says';
  const taxCode =
    codes.length === 0
      ? asUsual
      : await ask.choose('How is it taxed?', [asUsual, ...codes], current?.taxCode ?? asUsual);
  const category = book.tax.codes.find((code) => code.id === taxCode)?.category;
  const certificate =
    category === 'E' ? await ask.text('Number of its exemption certificate', current?.exemptionCertificate ?? '') : '';
  const optional = { contact, email, taxIdentifier, exemptionCertificate: certificate };
  const kept = Object.fromEntries(Object.entries(optional).filter(([, text]) => text !== ''));
  const {
    contact: _c,
    email: _e,
    taxIdentifier: _t,
    exemptionCertificate: _x,
    taxCode: _k,
    language: _l,
    ...rest
  } = current ?? {};
  return payerRecord.parse({
    ...rest,
    schema: 'keyout-payer-1',
    id,
    name,
    address,
    ...kept,
    termsDays: Number(terms),
    needsPurchaseOrder,
    invoicePer,
    ...(taxCode === asUsual ? {} : { taxCode }),
    ...(language === asBook ? {} : { language }),
  });
}
