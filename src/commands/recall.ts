import { identifyWires } from '../evidence/identify-wires.ts';
import { terminalNumbers } from '../records/wire-role.ts';
import { listJobs } from '../storage/jobs.ts';
import { openBook } from '../storage/open-book.ts';
import type { Command } from './command.ts';

/** `keyout recall [WORDS]`: what earlier jobs on such a vehicle found, as a hint to prove, never as a fact. */
export const recall: Command = {
  name: 'recall',
  words: '[WORDS]',
  summary: 'what earlier jobs on such a vehicle found',
  options: {},
  run: async (call, world) => {
    const book = await openBook(world.bookFolder);
    const words = call.words.map((word) => word.toLowerCase());
    const jobs = (await listJobs(book, {})).filter((job) => {
      const { maker, model, year, plate, vin, unitNumber } = job.vehicle;
      const text = [maker, model, year, plate, vin, unitNumber, job.id].join(' ').toLowerCase();
      return words.every((word) => text.includes(word));
    });
    const found = jobs.map((job) => ({
      job: job.id,
      vehicle: [job.vehicle.maker, job.vehicle.model, job.vehicle.year].filter((word) => word !== undefined).join(' '),
      wires: identifyWires(job, book.book.meters).wires.map((wire) => {
        const point = job.probePoints?.find((each) => each.name === wire.point);
        return {
          role: wire.conclusion.kind === 'concluded' ? wire.conclusion.role : 'not proven',
          terminal: wire.conclusion.kind === 'concluded' ? terminalNumbers[wire.conclusion.role] : null,
          where: [
            point?.connector,
            point?.pin === undefined ? undefined : `pin ${point.pin}`,
            point?.colour,
            point?.stripe,
          ]
            .filter((word) => word !== undefined)
            .join(', '),
        };
      }),
      placed: job.placement === undefined ? null : `${job.placement.zone}, ${job.placement.surface}`,
    }));
    if (world.json) world.say(JSON.stringify(found, null, 2));
    else {
      const blocks = found.map((each) =>
        [
          `${each.job}  ${each.vehicle}`,
          ...each.wires.map((wire) => `  ${wire.role.padEnd(11)} ${wire.where}`),
          ...(each.placed === null ? [] : [`  device      ${each.placed}`]),
        ].join('\n'),
      );
      world.say(
        blocks.length === 0
          ? 'No earlier job matches these words.'
          : ['A hint to prove again with the meter, never a fact.', ...blocks].join('\n\n'),
      );
    }
    return 0;
  },
};
