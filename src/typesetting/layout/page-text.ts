import type { Page } from './page.ts';

/**
 * The text of pages, line by line from the top, for a readable difference.
 * @param pages finished pages
 */
export function pageText(pages: readonly Page[]): string {
  return pages
    .map((page, index) => {
      const lines = new Map<number, { x: number; text: string }[]>();
      for (const mark of page.marks) {
        if (mark.kind !== 'text') continue;
        const y = Math.round(mark.y);
        lines.set(y, [...(lines.get(y) ?? []), mark]);
      }
      const sorted = [...lines].sort(([one], [other]) => one - other);
      return [
        `--- page ${index + 1}`,
        ...sorted.map(([, marks]) =>
          marks
            .toSorted((one, other) => one.x - other.x)
            .map((mark) => mark.text.trimEnd())
            .join('  '),
        ),
      ].join('\n');
    })
    .join('\n');
}
