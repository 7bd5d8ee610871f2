import { hasLuhnDigit } from './luhn.ts';

/** What is wrong with a card's number; null when nothing is. */
export type IccidFault = 'not 18 to 20 digits' | 'does not begin with 89' | 'check digit wrong' | null;

/**
 * What is wrong with the number of a subscriber card.
 * ITU-T E.118: 89 (telecommunications, ISO/IEC 7812), country code, issuer, account, Luhn digit, 19 digits at most.
 * Cards printed with 20 digits carry the Luhn digit as the 19th or the 20th, cards printed with 18 carry none or their
 * own (common practice, no source): what cannot be told apart is not called wrong.
 * @param iccid as printed; spaces and hyphens do not count
 */
export function iccidFault(iccid: string): IccidFault {
  const digits = iccid.replace(/[\s-]/g, '');
  if (!/^\d{18,20}$/.test(digits)) return 'not 18 to 20 digits';
  if (!digits.startsWith('89')) return 'does not begin with 89';
  if (digits.length === 18) return null;
  const right = hasLuhnDigit(digits) || (digits.length === 20 && hasLuhnDigit(digits.slice(0, 19)));
  return right ? null : 'check digit wrong';
}
