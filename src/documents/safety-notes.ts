import type { Job } from '../records/job.ts';

type Note = { readonly text: string; readonly applies: (job: Job) => boolean };
const connected = (job: Job) => (job.connections ?? []).length > 0;

/** Notes for the driver and the next mechanic, each with the condition under which it is true. Usual cautions of the trade; common practice, no source. */
const notes: readonly Note[] = [
  {
    text: 'Do not remove, cover or move the device; tell the fleet office if it comes loose or rattles.',
    applies: (job) =>
      job.device !== undefined && job.identity.visit !== 'removal' && job.identity.visit !== 'wasted visit',
  },
  { text: 'If an air bag or warning lamp stays on, stop using the vehicle and have it looked at.', applies: connected },
  {
    text: 'Replace a blown fuse only with one of the same rating; if it blows again, have the lead traced first.',
    applies: (job) => (job.connections ?? []).some((made) => made.fuse !== undefined),
  },
  {
    text: 'Before work on the wiring: park brake on, wheels chocked, engine off, key out, battery negative off first and on last.',
    applies: connected,
  },
  {
    text: 'Never probe, cut or tap yellow-sleeved restraint wiring or data pairs.',
    applies: connected,
  },
  {
    text: 'Never probe, cut or move orange high-voltage cable; only trained people may work on it.',
    applies: (job) => job.vehicle.drive === 'hybrid' || job.vehicle.drive === 'electric',
  },
  {
    text: 'The supply is taken on the battery side of the isolator: the device stays live when the isolator is off.',
    applies: (job) =>
      (job.connections ?? []).some(
        (made) =>
          made.lead === 'supply' &&
          job.probePoints?.find((point) => point.name === made.point)?.isolatorSide === 'battery',
      ),
  },
  {
    text: 'This is a 24 V system: 12 V lamps, testers and chargers do not belong on these leads.',
    applies: (job) => job.vehicle.systemVolts === 24 && connected(job),
  },
  {
    text: 'Run the engine only in the open or with the exhaust led away.',
    applies: (job) => connected(job) && job.vehicle.drive !== 'electric',
  },
];

/** The notes that apply to a job. */
export function safetyNotes(job: Job): readonly string[] {
  return notes.filter((note) => note.applies(job)).map((note) => note.text);
}
