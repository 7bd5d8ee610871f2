import type { Book } from '../records/book.ts';
import { something } from './answers.ts';
import type { Ask } from './question.ts';

type Address = Book['business']['address'];

/** A postal address, part by part. */
export async function askAddress(ask: Ask, current: Address | null, usualCountry: string): Promise<Address> {
  const lines = await ask.text(
    'Street (several lines with ";")',
    current?.lines.join('; ') ?? '',
    (text) =>
      something(text) ??
      (text.split(';').filter((each) => each.trim() !== '').length > 4 ? 'At most four lines.' : null),
  );
  const city = await ask.text('City', current?.city ?? '', something);
  const region = await ask.text('State or region (empty for none)', current?.region ?? '');
  const postcode = await ask.text('Postcode', current?.postcode ?? '');
  const country = await ask.text('Country, two letters (ISO 3166-1)', current?.country ?? usualCountry, (text) =>
    /^[A-Za-z]{2}$/.test(text) ? null : 'Type two letters such as US.',
  );
  return {
    lines: lines
      .split(';')
      .map((each) => each.trim())
      .filter((each) => each !== ''),
    city,
    ...(region === '' ? {} : { region }),
    ...(postcode === '' ? {} : { postcode }),
    country: country.toUpperCase(),
  };
}
