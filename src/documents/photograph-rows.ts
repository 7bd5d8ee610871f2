import type { Job } from '../records/job.ts';
import type { Writing } from '../words/writing.ts';

const inRow = 3;
type Cell = { readonly isThere: boolean; readonly source: string; readonly caption: string };
const empty: Cell = { isThere: false, source: '', caption: '' };

/**
 * The photographs of a job in rows of three, each with its caption.
 * @param job the job
 * @param imageNames names of the images that can be printed
 * @param writing the document's words
 */
export function photographRows(
  job: Job,
  imageNames: readonly string[],
  { terms }: Writing,
): readonly { readonly photographs: readonly Cell[] }[] {
  const cells = (job.photographs ?? [])
    .filter((each) => imageNames.includes(each.file))
    .map((each): Cell => ({ isThere: true, source: each.file, caption: each.caption ?? terms.shows[each.shows] }));
  const rows: { photographs: readonly Cell[] }[] = [];
  for (let first = 0; first < cells.length; first += inRow)
    rows.push({ photographs: Array.from({ length: inRow }, (_, index) => cells[first + index] ?? empty) });
  return rows;
}
