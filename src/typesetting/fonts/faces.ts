/** The five faces a document is set in. */
export const faces = ['sans', 'sansBold', 'condensed', 'condensedBold', 'mono'] as const;
export type Face = (typeof faces)[number];
export type FontBytes = Readonly<Record<Face, Uint8Array>>;
