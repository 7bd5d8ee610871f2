import type { Mark } from './page.ts';

/** A piece that goes on one page whole. */
export type Block = {
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly spaceBefore: number;
  readonly keepWithNext: boolean;
  /** repeated on top when this piece is the first of a page */
  readonly header: Block | null;
  readonly pageBreak: boolean;
};

/** A block with the usual values. */
export function block(part: Partial<Block> & Pick<Block, 'height' | 'marks'>): Block {
  return { spaceBefore: 0, keepWithNext: false, header: null, pageBreak: false, ...part };
}
