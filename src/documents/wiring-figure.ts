import type { Book } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import { terminalNumbers, type WireRole } from '../records/wire-role.ts';
import { wireColour, wirePlace, writeLength } from './write-facts.ts';

/** One lead of the wiring figure: words and heights in millimetres. */
export type WiringRow = {
  readonly wire: string;
  readonly place: string;
  readonly terminal: string;
  readonly joint: string;
  readonly hasFuse: boolean;
  readonly fuse: string;
  readonly lead: string;
  readonly yLine: string;
  readonly yAbove: string;
  readonly yBelow: string;
  readonly yBox: string;
  readonly isGround: boolean;
  readonly yGroundEnd: string;
  readonly yGroundTwo: string;
  readonly yGroundThree: string;
};

const order = ['supply', 'ignition', 'ground'];
const rowMillimetres = 12;

/** The wiring of a job, lead by lead, ground last; and its text alternative. */
export function wiringFigure(
  job: Job,
  book: Book,
): { readonly rows: readonly WiringRow[]; readonly height: string; readonly alternative: string } {
  const made = (job.connections ?? []).toSorted((one, other) => order.indexOf(one.lead) - order.indexOf(other.lead));
  const rows = made.map((each, index): WiringRow => {
    const point = job.probePoints?.find((one) => one.name === each.point);
    const role: WireRole = each.lead === 'supply' ? 'constant' : each.lead;
    const y = index * rowMillimetres + 5;
    return {
      wire: wireColour(point),
      place: wirePlace(point) || (each.lead === 'ground' ? (job.ground?.where ?? '') : ''),
      terminal: terminalNumbers[role] ?? '',
      joint: each.method,
      hasFuse: each.fuse !== undefined,
      fuse:
        each.fuse === undefined
          ? ''
          : `${each.fuse.ratingAmperes} A, at ${writeLength(each.fuse.distanceMillimetres, book)}`,
      lead: each.lead,
      yLine: String(y),
      yAbove: String(y - 1.2),
      yBelow: String(y + 3.6),
      yBox: String(y - 1.2),
      isGround: each.lead === 'ground',
      yGroundEnd: String(y + 4),
      yGroundTwo: String(y + 4.8),
      yGroundThree: String(y + 5.6),
    };
  });
  const alternative = rows
    .map(
      (row) =>
        `${row.lead}: ${row.wire}${row.place === '' ? '' : ` at ${row.place}`}, terminal ${row.terminal}, ${row.joint}${row.hasFuse ? `, fuse ${row.fuse}` : ''}`,
    )
    .join('; ');
  return { rows, height: String(Math.max(1, rows.length) * rowMillimetres + 1), alternative };
}
