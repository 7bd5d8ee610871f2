import type { Book } from '../records/book.ts';
import { languages } from '../records/language.ts';
import { something } from './answers.ts';
import { askAddress } from './ask-address.ts';
import { languageNames } from './language-names.ts';
import type { Ask } from './question.ts';

/** Parts of the book that say who the business is and how it writes. */
export type BusinessPart = Pick<Book, 'business' | 'locale' | 'language' | 'currency' | 'timeZone' | 'paper' | 'units'>;

const isZone = (text: string) => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: text });
    return /^[A-Za-z_]+(\/[A-Za-z0-9_+-]+){0,2}$/.test(text);
  } catch {
    return false;
  }
};
const isLocale = (text: string) =>
  /^[a-z]{2}(-[A-Z]{2})?$/.test(text) && Intl.NumberFormat.supportedLocalesOf(text).length > 0;

async function askIdentity(ask: Ask, current: Book['business'] | null): Promise<Book['business']> {
  const name = await ask.text('Name of the business', current?.name ?? '', something);
  const installer = await ask.text('Name of the installer', current?.installer ?? '', something);
  const address = await askAddress(ask, current?.address ?? null, '');
  const phone = await ask.text('Telephone', current?.phone ?? '');
  const email = await ask.text('E-mail', current?.email ?? '');
  const website = await ask.text('Website (empty for none)', current?.website ?? '');
  const company = await ask.text('Company register number (empty for none)', current?.companyIdentifier ?? '');
  const { phone: _p, email: _e, website: _w, companyIdentifier: _c, ...rest } = current ?? { name, installer, address };
  return {
    ...rest,
    name,
    installer,
    address,
    ...(phone === '' ? {} : { phone }),
    ...(email === '' ? {} : { email }),
    ...(website === '' ? {} : { website }),
    ...(company === '' ? {} : { companyIdentifier: company }),
  };
}

/**
 * Who the business is, and its zone, currency, language, paper and units.
 * @param ask how a prompt reaches a person
 * @param current the book as it is, or null when it begins
 * @param here the machine's own zone, offered as the usual answer
 */
export async function askBusiness(ask: Ask, current: BusinessPart | null, here: string): Promise<BusinessPart> {
  const business = await askIdentity(ask, current?.business ?? null);
  const american = business.address.country === 'US';
  const timeZone = await ask.text('Time zone', current?.timeZone ?? here, (text) =>
    isZone(text) ? null : 'Type a zone of the tz database such as America/Denver.',
  );
  const currency = await ask.text(
    'Currency, three letters (ISO 4217)',
    current?.currency ?? (american ? 'USD' : ''),
    (text) => (/^[A-Za-z]{3}$/.test(text) ? null : 'Type three letters such as USD.'),
  );
  const language = await ask.choose(
    'Language of the documents',
    languages.map((value) => ({ value, name: languageNames.of(value) ?? value })),
    current?.language ?? 'en',
  );
  const locale = await ask.text(
    'How dates and numbers are written (language-COUNTRY)',
    current?.locale ?? `${language}-${business.address.country}`,
    (text) => (isLocale(text) ? null : 'Type a language and country such as en-US.'),
  );
  const paper = await ask.choose('Paper', ['letter', 'a4'], current?.paper ?? (american ? 'letter' : 'a4'));
  const distance = await ask.choose('Distances in', ['mi', 'km'], current?.units.distance ?? (american ? 'mi' : 'km'));
  const length = await ask.choose('Lengths in', ['in', 'mm'], current?.units.length ?? (american ? 'in' : 'mm'));
  return { business, timeZone, currency: currency.toUpperCase(), language, locale, paper, units: { distance, length } };
}
