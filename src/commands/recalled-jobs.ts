import { identifyWires } from '../evidence/identify-wires.ts';
import type { Job } from '../records/job.ts';
import { terminalNumbers } from '../records/wire-role.ts';
import { listJobs } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';

/** What one earlier job found: its wires and where the device sits. */
export type RecalledJob = {
  readonly job: string;
  readonly vehicle: string;
  readonly wires: readonly { readonly role: string; readonly terminal: string | null; readonly where: string }[];
  readonly placed: string | null;
};

const spoken = (words: readonly (string | number | undefined)[], between: string) =>
  words.filter((word) => word !== undefined).join(between);

/**
 * What earlier jobs found whose vehicle all words are said of; a hint to prove, never a fact.
 * @param book the open book
 * @param words maker, model, year, plate, VIN, unit number or job
 * @param except a job not to look at
 */
export function recalledJobs(book: OpenBook, words: readonly string[], except: Job | null): readonly RecalledJob[] {
  const sought = words.map((word) => word.toLowerCase());
  return listJobs(book, {})
    .filter((job) => {
      const { maker, model, year, plate, vin, unitNumber } = job.vehicle;
      const text = spoken([maker, model, year, plate, vin, unitNumber, job.id], ' ').toLowerCase();
      return job.id !== except?.id && sought.every((word) => text.includes(word));
    })
    .map((job) => ({
      job: job.id,
      vehicle: spoken([job.vehicle.maker, job.vehicle.model, job.vehicle.year], ' '),
      wires: identifyWires(job, book.book.meters).wires.map((wire) => {
        const point = job.probePoints?.find((each) => each.name === wire.point);
        const role = wire.conclusion.kind === 'concluded' ? wire.conclusion.role : null;
        const pin = point?.pin === undefined ? undefined : `pin ${point.pin}`;
        return {
          role: role ?? 'not proven',
          terminal: role === null ? null : (terminalNumbers[role] ?? null),
          where: spoken([point?.connector, pin, point?.colour, point?.stripe], ', '),
        };
      }),
      placed: job.placement === undefined ? null : `${job.placement.zone}, ${job.placement.surface}`,
    }));
}
