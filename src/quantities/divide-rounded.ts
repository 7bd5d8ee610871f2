/**
 * One whole number divided by another, rounded to a whole number.
 * @param numerator the number to divide
 * @param denominator what to divide by, not zero
 * @param mode "half away from zero" (365.125 to 365.13; EN 16931 practice) or "half even"
 */
export function divideRounded(
  numerator: bigint,
  denominator: bigint,
  mode: 'half away from zero' | 'half even' = 'half away from zero',
): bigint {
  const negative = numerator < 0n !== denominator < 0n;
  const top = numerator < 0n ? -numerator : numerator;
  const bottom = denominator < 0n ? -denominator : denominator;
  const whole = top / bottom;
  const twice = (top % bottom) * 2n;
  const up = twice > bottom || (twice === bottom && (mode === 'half away from zero' || whole % 2n === 1n));
  const rounded = up ? whole + 1n : whole;
  return negative ? -rounded : rounded;
}
