const weighed = (digits: string, weights: readonly number[]) =>
  weights.reduce((sum, weight, index) => sum + weight * Number(digits[index] ?? 0), 0);

function isLocationNumber(text: string): boolean {
  const body = [...text.slice(0, -1)].toReversed();
  const sum = body.reduce((all, digit, index) => all + Number(digit) * (index % 2 === 0 ? 3 : 1), 0);
  return text.length > 1 && (10 - (sum % 10)) % 10 === Number(text.at(-1));
}

function luhnSum(text: string): number {
  return [...text].reduce((sum, digit, index) => {
    const value = index % 2 === 0 ? Number(digit) * 2 : Number(digit);
    return sum + (value > 9 ? value - 9 : value);
  }, 0);
}

// Source: Peppol BIS Billing 3, PEPPOL-COMMON-R040 to R055 (release 2026.5); schemes not listed have no form of their own.
const forms: Readonly<Record<string, { readonly form: RegExp; readonly sound?: (text: string) => boolean }>> = {
  '0007': { form: /^\d{10}$/, sound: (text) => luhnSum(text) % 10 === 0 },
  '0088': { form: /^\d+$/, sound: isLocationNumber },
  '0096': { form: /^\d{10}$/ },
  '0106': { form: /^\d{8}$/ },
  '0151': {
    form: /^[1-9]\d{10}$/,
    sound: (text) =>
      weighed(`${Number(text[0]) - 1}${text.slice(1)}`, [10, 1, 3, 5, 7, 9, 11, 13, 15, 17, 19]) % 89 === 0,
  },
  '0184': { form: /^(DK)?\d{8}$/ },
  '0190': { form: /^\d{20}$/ },
  '0192': {
    form: /^\d{9}$/,
    sound: (text) => (11 - (weighed(text, [3, 2, 7, 6, 5, 4, 3, 2]) % 11)) % 11 === Number(text[8]),
  },
  '0196': { form: /^\d{10}$/ },
  '0198': { form: /^DK\d{8}$/ },
  '0208': { form: /^\d{10}$/, sound: (text) => 97 - (Number(text.slice(0, 8)) % 97) === Number(text.slice(8)) },
};

/**
 * Whether an identifier has the form and the check digits that its scheme prescribes.
 * @param scheme code of the list of ISO 6523 or EAS
 * @param identifier without blanks
 */
export function fitsScheme(scheme: string, identifier: string): boolean {
  const own = forms[scheme];
  return own === undefined || (own.form.test(identifier) && (own.sound?.(identifier) ?? true));
}
