import { type Block, block, stacked, stackHeight } from './block.ts';
import { moved } from './page.ts';

/** Blocks that stand in one column, at a distance from the left in points. */
export type Strip = { readonly x: number; readonly blocks: readonly Block[] };

/**
 * Columns set beside each other as one block; where that would be taller than a page, as several, each at most as tall as the room.
 * @param strips the columns from left to right
 * @param room points that a page has
 */
export function sideBySide(strips: readonly Strip[], room: number): readonly Block[] {
  const parts = strips.map((strip) => ({ x: strip.x, slices: slices(strip.blocks, room) }));
  const count = Math.max(1, ...parts.map((part) => part.slices.length));
  return Array.from({ length: count }, (_, index) => {
    const set = parts.map((part) => ({ x: part.x, block: part.slices[index] ?? block({ height: 0, marks: [] }) }));
    return block({
      height: Math.max(0, ...set.map((each) => each.block.height)),
      marks: set.flatMap((each) => each.block.marks.map((mark) => moved(mark, each.x, 0))),
    });
  });
}

function slices(blocks: readonly Block[], room: number): readonly Block[] {
  const all: Block[] = [];
  let open: Block[] = [];
  for (const each of blocks) {
    if (open.length > 0 && stackHeight([...open, each]) > room) {
      all.push(stacked(open));
      open = each.header === null ? [] : [each.header];
    }
    open.push(each);
  }
  return open.length > 0 ? [...all, stacked(open)] : all;
}
