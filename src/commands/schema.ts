import { z } from 'zod';
import { Problem } from '../problem.ts';
import { book } from '../records/book.ts';
import { deviceProfiles } from '../records/device-profile.ts';
import { job } from '../records/job.ts';
import { payer } from '../records/payer.ts';
import { rateCard } from '../records/rate-card.ts';
import { trip } from '../records/trip.ts';
import type { Command } from './command.ts';

const schemas: Readonly<Record<string, z.ZodType>> = {
  job,
  book,
  rates: rateCard,
  devices: deviceProfiles,
  payer,
  trip,
};

/** `keyout schema NAME`: the JSON Schema of a record, so that an editor can complete a file written by hand. */
export const schema: Command = {
  name: 'schema',
  words: 'NAME',
  summary: `JSON Schema of a record: ${Object.keys(schemas).join(', ')}`,
  options: {},
  run: async (call, world) => {
    const name = call.words[0] ?? '';
    const found = schemas[name];
    if (found === undefined) {
      throw new Problem(
        `There is no record "${name}".`,
        'keyout schema',
        `Name one of ${Object.keys(schemas).join(', ')}.`,
        2,
      );
    }
    world.say(JSON.stringify(z.toJSONSchema(found, { io: 'input', reused: 'inline' }), null, 2));
    return 0;
  },
};
