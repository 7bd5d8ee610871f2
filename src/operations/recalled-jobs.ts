import { identifyWires } from '../evidence/identify-wires.ts';
import type { Job } from '../records/job.ts';
import { terminalNumbers } from '../records/wire-role.ts';
import { listJobs } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';

/** What one earlier job found: how one gets at the wires, what they are, where the device sits. */
export type RecalledJob = {
  readonly job: string;
  readonly vehicle: string;
  /** what was opened, in order: "driver knee panel: 4 × hex screw 7 mm (7 mm socket)" */
  readonly opened: readonly string[];
  readonly wires: readonly {
    readonly role: string;
    readonly terminal: string | null;
    readonly where: string;
    /** how it was joined, or null: "wrapped tap, fuse 3 A" */
    readonly joined: string | null;
  }[];
  readonly placed: string | null;
};

const spoken = (words: readonly (string | number | undefined)[], between: string) =>
  words.filter((word) => word !== undefined).join(between);

// as people type it: no matter the case, accents, or how a plate is spaced
const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
const squeezed = (text: string) => plain(text).replace(/[^\p{L}\p{N}]/gu, '');

function isSaidOf(job: Job, word: string): boolean {
  const { maker, model, year, plate, vin, unitNumber } = job.vehicle;
  const names = [maker, model, year?.toString(), plate, vin, unitNumber, job.id].filter((name) => name !== undefined);
  const short = squeezed(word);
  return (
    plain(names.join(' ')).includes(plain(word)) ||
    (short !== '' && names.some((name) => squeezed(name).includes(short)))
  );
}

function joinedAt(job: Job, point: string): string | null {
  const made = job.connections?.find((each) => each.point === point);
  if (made === undefined) return null;
  return spoken([made.method, made.fuse === undefined ? undefined : `fuse ${made.fuse.ratingAmperes} A`], ', ');
}

function recalled(book: OpenBook, job: Job): RecalledJob {
  return {
    job: job.id,
    vehicle: spoken([job.vehicle.maker, job.vehicle.model, job.vehicle.year], ' '),
    opened: (job.panels ?? []).map(
      ({ name, out, fastener, tool }) => `${name}: ${out} × ${fastener}${tool === undefined ? '' : ` (${tool})`}`,
    ),
    wires: identifyWires(job, book.book.meters).wires.map((wire) => {
      const point = job.probePoints?.find((each) => each.name === wire.point);
      const role = wire.conclusion.kind === 'concluded' ? wire.conclusion.role : null;
      const pin = point?.pin === undefined ? undefined : `pin ${point.pin}`;
      const colour = point?.stripe === undefined ? point?.colour : `${point.colour} with ${point.stripe} stripe`;
      return {
        role: role ?? 'not proven',
        terminal: role === null ? null : (terminalNumbers[role] ?? null),
        where: spoken([point?.connector, pin, colour], ', '),
        joined: joinedAt(job, wire.point),
      };
    }),
    placed: job.placement === undefined ? null : `${job.placement.zone}, ${job.placement.surface}`,
  };
}

/**
 * What earlier jobs found whose vehicle all words are said of, the newest first; a hint to prove, never a fact.
 * @param book the open book
 * @param words maker, model, year, plate, VIN, unit number or job
 * @param except a job not to look at
 */
export function recalledJobs(book: OpenBook, words: readonly string[], except: Job | null): readonly RecalledJob[] {
  return listJobs(book, {})
    .filter((job) => job.id !== except?.id && words.every((word) => isSaidOf(job, word)))
    .toSorted((one, other) => (one.day === other.day ? 0 : one.day < other.day ? 1 : -1))
    .map((job) => recalled(book, job));
}
