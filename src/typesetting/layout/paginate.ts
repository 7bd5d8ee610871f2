import { type Block, type Hold, stackHeight } from './block.ts';
import { type Mark, moved } from './page.ts';

/**
 * Blocks put on pages: what holds together goes to the next page together; only a group taller than a page is parted, first where it holds loosely.
 * @param blocks pieces from top to bottom, none taller than the room
 * @param room height of a page in points
 */
export function paginate(blocks: readonly Block[], room: number): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  let y = 0;
  const put = (set: Block) => {
    for (const mark of set.marks) pages.at(-1)?.push(moved(mark, 0, y));
    y += set.height;
  };
  const turn = (next: Block | undefined) => {
    pages.push([]);
    y = 0;
    if (next !== undefined && next.header !== null) put(next.header);
  };
  const fits = (group: readonly Block[]) =>
    y + (y > 0 ? (group[0]?.spaceBefore ?? 0) : 0) + stackHeight(group) <= room + 0.01;
  const place = (group: readonly Block[], parts: readonly Hold[]): void => {
    const [part, ...finer] = parts;
    const head = group[0]?.header;
    const alone = stackHeight(group) + (head?.height ?? 0) <= room + 0.01;
    if (!fits(group) && !alone && part !== undefined) {
      for (const each of groups(group, part)) place(each, finer);
      return;
    }
    // a single piece that does not even fit below its repeated head goes without it
    if (!fits(group) && y > 0) turn(alone ? group[0] : undefined);
    for (const each of group) {
      if (each.blank && y === 0 && pages.length > 1) continue;
      const space = y > 0 ? each.spaceBefore : 0;
      if (y > 0 && y + space + each.height > room + 0.01) turn(each);
      y += y > 0 ? each.spaceBefore : 0;
      put(each);
    }
  };
  for (const section of sections(blocks)) {
    if (section.turned && (y > 0 || pages.length > 1)) turn(undefined);
    for (const group of groups(section.blocks, 'no')) place(group, ['loosely', 'firmly']);
  }
  return pages;
}

function sections(
  blocks: readonly Block[],
): readonly { readonly turned: boolean; readonly blocks: readonly Block[] }[] {
  const all: { turned: boolean; blocks: Block[] }[] = [{ turned: false, blocks: [] }];
  for (const each of blocks) {
    if (each.pageBreak) all.push({ turned: true, blocks: [] });
    else all.at(-1)?.blocks.push(each);
  }
  // two breaks in a row, or one at the very end, would leave an empty page
  return all.filter((section, index) => section.blocks.length > 0 || index === 0);
}

// parts blocks after each one that holds no firmer than asked
function groups(blocks: readonly Block[], hold: Hold): readonly (readonly Block[])[] {
  const strength: Readonly<Record<Hold, number>> = { no: 0, loosely: 1, firmly: 2 };
  const all: Block[][] = [];
  let open: Block[] = [];
  for (const [index, each] of blocks.entries()) {
    open.push(each);
    if (strength[each.hold] > strength[hold] || (blocks[index + 1]?.holdsPrevious === true && hold !== 'firmly'))
      continue;
    all.push(open);
    open = [];
  }
  return open.length > 0 ? [...all, open] : all;
}
