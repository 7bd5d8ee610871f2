/**
 * Whether the last digit is the Luhn check digit of the others.
 * Source: ISO/IEC 7812-1 annex B; used for the IMEI by 3GPP TS 23.003 annex B and for the ICCID by ITU-T E.118.
 * @param digits digits only
 */
export function hasLuhnDigit(digits: string): boolean {
  const sum = [...digits].reverse().reduce((all, digit, index) => {
    const doubled = Number(digit) * (index % 2 === 1 ? 2 : 1);
    return all + (doubled > 9 ? doubled - 9 : doubled);
  }, 0);
  return /^\d{2,}$/.test(digits) && sum % 10 === 0;
}
