import { type Book, taxCategories } from '../records/book.ts';
import { numberOf, numberOrNothing, something } from './answers.ts';
import { shortName } from './ask-payer.ts';
import type { Ask } from './question.ts';

type Tax = Book['tax'];
type TaxCode = Tax['codes'][number];

const categoryNames: Readonly<Record<(typeof taxCategories)[number], string>> = {
  S: 'taxed at a rate',
  Z: 'taxed at zero',
  E: 'exempt',
  AE: 'reverse charge: the payer owes the tax',
  K: 'supply within the European Union, not taxed',
  G: 'export, not taxed',
  O: 'outside the scope of tax',
};

async function askCode(ask: Ask, taken: readonly string[]): Promise<TaxCode | null> {
  const name = await ask.text('A tax code: its name on the invoice (empty when no more)', '');
  if (name === '') return null;
  const category = await ask.choose(
    'What it means',
    taxCategories.map((each) => ({ value: each, name: `${categoryNames[each]} (${each})` })),
    'S',
  );
  const jurisdictions: TaxCode['jurisdictions'] = [];
  while (category === 'S') {
    const place =
      jurisdictions.length === 0 ? 'Rate in percent' : 'Another jurisdiction’s rate added to it (empty when none)';
    const rate = await ask.text(
      place,
      '',
      (text) => (jurisdictions.length === 0 ? something(text) : null) ?? numberOrNothing(text),
    );
    if (rate === '') break;
    const of = await ask.text('Whose rate', jurisdictions.length === 0 ? name : '', something);
    jurisdictions.push({ name: of, ratePercent: String(numberOf(rate)) });
  }
  const reason =
    category === 'S' || category === 'Z' ? '' : await ask.text('Reason, printed on the invoice', '', something);
  return {
    id: shortName(name, taken),
    name,
    category,
    jurisdictions: category === 'Z' ? [{ name, ratePercent: '0' }] : jurisdictions,
    ...(reason === '' ? {} : { reason }),
  };
}

/**
 * How the business is taxed: regime, numbers, codes, and which kind of line has which. The book says the rates; nothing is advised.
 * @param ask how a prompt reaches a person
 * @param current the book's tax as it is, or null
 * @param identity tax numbers as they are
 */
export async function askTax(
  ask: Ask,
  current: Tax | null,
  identity: Pick<Book['business'], 'taxIdentifier' | 'taxRegistration'>,
): Promise<{ readonly tax: Tax; readonly identity: Pick<Book['business'], 'taxIdentifier' | 'taxRegistration'> }> {
  const regime = await ask.choose('Tax', ['none', 'sales tax', 'VAT', 'GST'], current?.regime ?? 'none');
  if (regime === 'none') return { tax: { regime, pricesInclude: false, codes: [], lines: {} }, identity: {} };
  const number = await ask.text(
    regime === 'sales tax' ? 'Sales tax registration (empty for none)' : `${regime} number with its country prefix`,
    (regime === 'sales tax' ? identity.taxRegistration : identity.taxIdentifier) ?? '',
  );
  const pricesInclude = await ask.confirm('Do your prices include the tax?', current?.pricesInclude ?? false);
  const keep =
    (current?.codes.length ?? 0) > 0 &&
    (await ask.confirm(`Keep the tax codes ${current?.codes.map((code) => code.name).join(', ')}?`, true));
  const codes = keep ? [...(current?.codes ?? [])] : [];
  for (;;) {
    const code = await askCode(
      ask,
      codes.map((each) => each.id),
    );
    if (code !== null) codes.push(code);
    else if (codes.length > 0) break;
  }
  const choices = codes.map((code) => ({ value: code.id, name: code.name }));
  const lines: Record<string, string> = {};
  const first = choices[0]?.value ?? '';
  const ordinary: string = await ask.choose('Work is taxed with', choices, current?.lines.default ?? first);
  lines.default = ordinary;
  for (const kind of ['parts', 'travel distance'] as const) {
    const usual: string = current?.lines[kind] ?? ordinary;
    const chosen: string = await ask.choose(kind === 'parts' ? 'Parts with' : 'Travel with', choices, usual);
    if (chosen === ordinary) continue;
    lines[kind] = chosen;
    if (kind === 'travel distance') lines['travel time'] = chosen;
  }
  return {
    tax: { regime, pricesInclude, codes, lines: lines as Tax['lines'] },
    identity: number === '' ? {} : regime === 'sales tax' ? { taxRegistration: number } : { taxIdentifier: number },
  };
}
