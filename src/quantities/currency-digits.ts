const none = new Set([
  'BIF',
  'CLP',
  'DJF',
  'GNF',
  'ISK',
  'JPY',
  'KMF',
  'KRW',
  'PYG',
  'RWF',
  'UGX',
  'UYI',
  'VND',
  'VUV',
  'XAF',
  'XOF',
  'XPF',
]);
const three = new Set(['BHD', 'IQD', 'JOD', 'KWD', 'LYD', 'OMR', 'TND']);
const four = new Set(['CLF', 'UYW']);

/**
 * Decimals of a currency's minor unit. Source: ISO 4217 (two unless listed here).
 * @param currency three-letter code
 */
export function currencyDigits(currency: string): number {
  if (none.has(currency)) return 0;
  if (three.has(currency)) return 3;
  return four.has(currency) ? 4 : 2;
}
