/** Points in one millimetre. */
export const millimetre = 72 / 25.4;
/** The grid's baseline: 4.5 mm, in points. */
export const baseline = 4.5 * millimetre;
/** Margin left, right and above, in points. */
export const margin = 16 * millimetre;
/** Margin below, in points. */
export const marginBottom = 20 * millimetre;
/** Type sizes with their leading, in points. */
export const sizes = {
  note: { size: 8, leading: 3.6 * millimetre },
  text: { size: 9.5, leading: baseline },
  head: { size: 11, leading: baseline },
  title: { size: 17, leading: baseline * 1.6 },
} as const;
