import type { Face } from '../fonts/faces.ts';

/** Why a mark is not part of the text: page furniture, lines and boxes between things, a head printed once more. */
export type Furniture = 'footer' | 'layout' | 'repeated';
/** Where a mark stands in the structure: the number of its element, or the kind of furniture it is. */
export type Place = number | Furniture;

type Placed = { readonly x: number; readonly y: number; readonly element: Place };

/** What stands on a page, at fixed points from the top left corner, in points (1/72 in). */
export type Mark =
  | (Placed & {
      readonly kind: 'text';
      readonly text: string;
      readonly face: Face;
      readonly size: number;
      readonly width: number;
    })
  | (Placed & {
      readonly kind: 'line';
      readonly toX: number;
      readonly toY: number;
      readonly weight: number;
      readonly colour: string;
    })
  | (Placed & {
      readonly kind: 'rect';
      readonly width: number;
      readonly height: number;
      readonly weight: number;
      readonly fill: string;
    })
  | (Placed & { readonly kind: 'circle'; readonly radius: number; readonly weight: number; readonly fill: string })
  | (Placed & {
      readonly kind: 'polyline';
      /** steps from x, y in points: right, down */
      readonly steps: readonly (readonly [number, number])[];
      readonly weight: number;
    })
  | (Placed & {
      readonly kind: 'path';
      /** SVG path data in units of `scale` points, clipped to the frame width by height */
      readonly data: string;
      readonly scale: number;
      readonly width: number;
      readonly height: number;
      readonly weight: number;
      readonly fill: string;
    })
  | (Placed & { readonly kind: 'image'; readonly name: string; readonly width: number; readonly height: number })
  | (Placed & {
      readonly kind: 'field';
      readonly name: string;
      readonly label: string;
      readonly width: number;
      readonly height: number;
    });

export type Page = { readonly width: number; readonly height: number; readonly marks: readonly Mark[] };

/** A mark moved right and down. */
export function moved(mark: Mark, right: number, down: number): Mark {
  const shifted = { ...mark, x: mark.x + right, y: mark.y + down };
  return shifted.kind === 'line' ? { ...shifted, toX: shifted.toX + right, toY: shifted.toY + down } : shifted;
}
