import { type Mark, moved } from './page.ts';

/** How firmly a piece holds on to the next one: a long kept group may be parted where it holds only `loosely`. */
export type Hold = 'no' | 'loosely' | 'firmly';

/** A piece that goes on one page whole. */
export type Block = {
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly spaceBefore: number;
  readonly hold: Hold;
  /** holds on to the piece before it in the same way */
  readonly holdsPrevious: boolean;
  /** printed again on top when this piece is the first of a page */
  readonly header: Block | null;
  readonly pageBreak: boolean;
  /** only white: left out at the top of a page */
  readonly blank: boolean;
};

/** A block with the usual values. */
export function block(part: Partial<Block> & Pick<Block, 'height' | 'marks'>): Block {
  return {
    spaceBefore: 0,
    hold: 'no',
    holdsPrevious: false,
    header: null,
    pageBreak: false,
    blank: false,
    ...part,
  };
}

/** Height of blocks one below the other, in points, without the space before the first. */
export function stackHeight(blocks: readonly Block[]): number {
  return blocks.reduce((sum, each, index) => sum + (index === 0 ? 0 : each.spaceBefore) + each.height, 0);
}

/** Blocks joined into one that is never torn. */
export function stacked(blocks: readonly Block[]): Block {
  let height = 0;
  const marks: Mark[] = [];
  for (const [index, each] of blocks.entries()) {
    height += index === 0 ? 0 : each.spaceBefore;
    for (const mark of each.marks) marks.push(moved(mark, 0, height));
    height += each.height;
  }
  return block({ height, marks, spaceBefore: blocks[0]?.spaceBefore ?? 0 });
}
