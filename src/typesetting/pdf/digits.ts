/** A number as PDF writes it: at most three decimals, no exponent. */
export function digits(value: number): string {
  const rounded = Math.round(value * 1000) / 1000;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}
