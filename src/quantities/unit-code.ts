// Source: UN/ECE Recommendation No. 20, Codes for Units of Measure Used in International Trade, Revision 17, common codes;
// it has no code for a visit, which is counted as one (C62).
const unitCodes = {
  each: 'EA',
  hour: 'HUR',
  minute: 'MIN',
  day: 'DAY',
  mi: 'SMI',
  km: 'KMT',
  metre: 'MTR',
  foot: 'FOT',
  set: 'SET',
  visit: 'C62',
} as const;

/** A unit that a line of an invoice may have. */
export type Unit = keyof typeof unitCodes;

/**
 * The code of a unit in structured invoices (EN 16931 BT-130), as UN/ECE Recommendation 20 gives it ("mi" to "SMI").
 * @param unit the unit of a line
 */
export function unitCode(unit: Unit): string {
  return unitCodes[unit];
}
