/** Points in one millimetre. */
export const millimetre = 72 / 25.4;
/** The grid's baseline: 4.5 mm, in points. */
export const baseline = 4.5 * millimetre;
