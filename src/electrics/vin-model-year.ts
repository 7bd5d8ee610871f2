/** Letters and digits of position 10 in the order of their years, 1980 and again 2010 onward. Source: 49 CFR 565.15, Table VII (no I, O, Q, U, Z, 0; the list of signs from memory, the cycle from 73 FR 23367). */
const yearSigns = 'ABCDEFGHJKLMNPRSTVWXY123456789';

/**
 * The model years that position 10 of a VIN can mean, earliest first; none when the sign stands for no year.
 * Source: 49 CFR 565.15(b), (d)(1) and Table VII: on cars, multipurpose vehicles and trucks of at most 4536 kg (10,000 lb)
 * a letter in position 7 means 2010 to 2039, a digit 1980 to 2009; other vehicles stay ambiguous by 30 years.
 * Only North American makers must follow it.
 * @param vin 17 letters and digits
 * @param isLight whether the vehicle is one for which position 7 decides
 */
export function vinModelYears(vin: string, isLight: boolean): readonly number[] {
  if (vin.length !== 17) return [];
  const place = yearSigns.indexOf(vin[9] ?? ' ');
  if (place === -1) return [];
  const years = [1980 + place, 2010 + place];
  if (!isLight) return years;
  return /[A-Z]/.test(vin[6] ?? '') ? years.slice(1) : years.slice(0, 1);
}
