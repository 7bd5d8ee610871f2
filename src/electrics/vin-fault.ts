import { vinCheckDigit } from './vin.ts';
import { vinOrigin } from './vin-region.ts';

/** What is wrong with a VIN. */
export type VinFault =
  | { readonly kind: 'length'; readonly length: number }
  | { readonly kind: 'character'; readonly character: string; readonly position: number }
  | {
      readonly kind: 'check digit';
      readonly expected: string;
      readonly found: string;
      /** whether a regulation asks for the digit: North America only */
      readonly required: boolean;
    };

/**
 * The first thing wrong with a VIN, or null: length, a character that no VIN holds (I, O, Q or no letter or digit), the check digit.
 * Source: ISO 3779 (17 characters without I, O, Q); 49 CFR 565.15(c) (check digit, North America).
 * @param vin capital letters and digits
 */
export function vinFault(vin: string): VinFault | null {
  if (vin.length !== 17) return { kind: 'length', length: vin.length };
  const position = [...vin].findIndex((character) => !/[A-HJ-NPR-Z0-9]/.test(character));
  if (position !== -1) return { kind: 'character', character: vin[position] ?? '', position: position + 1 };
  const expected = vinCheckDigit(vin) ?? '';
  const found = vin[8] ?? '';
  const required = vinOrigin(vin)?.region === 'North America';
  return expected === found ? null : { kind: 'check digit', expected, found, required };
}
