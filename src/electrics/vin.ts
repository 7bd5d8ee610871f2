const values: Readonly<Record<string, number>> = {
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 7,
  H: 8,
  J: 1,
  K: 2,
  L: 3,
  M: 4,
  N: 5,
  P: 7,
  R: 9,
  S: 2,
  T: 3,
  U: 4,
  V: 5,
  W: 6,
  X: 7,
  Y: 8,
  Z: 9,
};
const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/**
 * The check digit that belongs at position 9 of a VIN, or null when the text has not 17 allowed characters.
 * Source: 49 CFR 565.15(c), Tables III to V.
 * @param vin 17 letters and digits without I, O, Q
 */
export function vinCheckDigit(vin: string): string | null {
  if (!/^[A-HJ-NPR-Z0-9]{17}$/.test(vin)) return null;
  const sum = [...vin].reduce(
    (all, character, index) => all + (values[character] ?? Number(character)) * (weights[index] ?? 0),
    0,
  );
  return sum % 11 === 10 ? 'X' : String(sum % 11);
}
