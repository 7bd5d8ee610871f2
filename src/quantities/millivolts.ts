/**
 * Whole millivolts from a meter's volts (12.62 → 12620).
 * @param volts volts as read, at most three decimals count
 */
export function millivoltsFromVolts(volts: number): number {
  return Math.round(volts * 1000);
}

/**
 * Volts as they are written on paper: two decimals, a true minus sign is left to the page (12620 → "12.62").
 * @param millivolts whole millivolts
 * @param decimalMark "." or ","
 */
export function writeVolts(millivolts: number, decimalMark: '.' | ',' = '.'): string {
  const hundredths = Math.sign(millivolts) * Math.round(Math.abs(millivolts) / 10);
  const sign = hundredths < 0 ? '-' : '';
  const whole = Math.trunc(Math.abs(hundredths) / 100);
  const rest = String(Math.abs(hundredths) % 100).padStart(2, '0');
  return `${sign}${whole}${decimalMark}${rest}`;
}
