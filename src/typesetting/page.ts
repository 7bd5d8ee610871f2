/** The five faces a document is set in. */
export const faces = ['sans', 'sansBold', 'condensed', 'condensedBold', 'mono'] as const;
export type Face = (typeof faces)[number];
export type FontBytes = Readonly<Record<Face, Uint8Array>>;

/** What stands on a page, at fixed points from the top left corner, in points (1/72 in). `tag` is its place in the structure, null for furniture. */
export type Mark =
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly face: Face;
      readonly size: number;
      readonly tag: string | null;
    }
  | {
      readonly kind: 'line';
      readonly x: number;
      readonly y: number;
      readonly toX: number;
      readonly toY: number;
      readonly weight: number;
      readonly colour: string;
    }
  | {
      readonly kind: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly weight: number;
      readonly fill: string;
    }
  | {
      readonly kind: 'circle';
      readonly x: number;
      readonly y: number;
      readonly radius: number;
      readonly weight: number;
      readonly fill: string;
    };

export type Page = { readonly width: number; readonly height: number; readonly marks: readonly Mark[] };

/** A mark moved right and down. */
export function moved<Each extends Mark>(mark: Each, right: number, down: number): Each {
  const shifted = { ...mark, x: mark.x + right, y: mark.y + down };
  return (mark.kind === 'line' ? { ...shifted, toX: mark.toX + right, toY: mark.toY + down } : shifted) as Each;
}
