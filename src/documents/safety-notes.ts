import type { Job } from '../records/job.ts';
import { nominalVolts } from '../records/nominal-volts.ts';
import type { NoteName } from '../words/note-name.ts';
import { isRemoval } from './summary-sentences.ts';

type Note = { readonly name: NoteName; readonly applies: (job: Job) => boolean };
const connected = (job: Job) =>
  (job.connections ?? []).length > 0 && !isRemoval(job) && job.identity.visit !== 'wasted visit';
const worked = (job: Job) => job.identity.visit !== 'wasted visit';

/** Notes for the driver and the next mechanic, each with the condition under which it is true. Usual cautions of the trade; common practice, no source. */
const notes: readonly Note[] = [
  { name: 'leave it alone', applies: (job) => job.device !== undefined && worked(job) && !isRemoval(job) },
  { name: 'warning lamp stays on', applies: connected },
  {
    name: 'same fuse',
    applies: (job) => connected(job) && (job.connections ?? []).some((made) => made.fuse !== undefined),
  },
  { name: 'before work on the wiring', applies: connected },
  { name: 'restraint wiring', applies: connected },
  {
    name: 'high voltage',
    applies: (job) => worked(job) && (job.vehicle.drive === 'hybrid' || job.vehicle.drive === 'electric'),
  },
  {
    name: 'live with the isolator off',
    applies: (job) =>
      connected(job) &&
      (job.connections ?? []).some(
        (made) =>
          made.lead === 'supply' &&
          job.probePoints?.find((point) => point.name === made.point)?.isolatorSide === 'battery',
      ),
  },
  {
    name: '24 volts',
    // where record and readings differ, the caution stands on either
    applies: (job) => connected(job) && (nominalVolts(job) === 24 || job.vehicle.systemVolts === 24),
  },
  {
    name: 'exhaust',
    applies: (job) => connected(job) && job.vehicle.drive !== undefined && job.vehicle.drive !== 'electric',
  },
];

/** The names of the notes that apply to a job. */
export function safetyNotes(job: Job): readonly NoteName[] {
  return notes.filter((note) => note.applies(job)).map((note) => note.name);
}
