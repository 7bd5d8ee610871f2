import type { Mark } from './page.ts';

export type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/**
 * The box a mark needs on its page, in points from the top left; the height of text is what its letters reach.
 * @param mark any mark
 */
export function markBox(mark: Mark): Box {
  switch (mark.kind) {
    case 'text':
      return {
        left: mark.x,
        top: mark.y - mark.size * 0.76,
        right: mark.x + mark.width,
        bottom: mark.y + mark.size * 0.24,
      };
    case 'line':
      return boxOf([
        [mark.x, mark.y],
        [mark.toX, mark.toY],
      ]);
    case 'circle':
      return {
        left: mark.x - mark.radius,
        top: mark.y - mark.radius,
        right: mark.x + mark.radius,
        bottom: mark.y + mark.radius,
      };
    case 'polyline':
      return boxOf([[mark.x, mark.y], ...mark.steps.map(([right, down]) => [mark.x + right, mark.y + down] as const)]);
    default:
      return { left: mark.x, top: mark.y, right: mark.x + mark.width, bottom: mark.y + mark.height };
  }
}

function boxOf(points: readonly (readonly [number, number])[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}
