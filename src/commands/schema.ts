import { z } from 'zod';
import { Problem } from '../problem.ts';
import { book } from '../records/book.ts';
import { deviceProfiles } from '../records/device-profile.ts';
import { job } from '../records/job.ts';
import { payer } from '../records/payer.ts';
import { rateCard } from '../records/rate-card.ts';
import { trip } from '../records/trip.ts';
import { checkOutput, rulesOutput } from './check-output.ts';
import type { Command } from './command.ts';

const schemas: Readonly<Record<string, z.ZodType>> = {
  job,
  book,
  rates: rateCard,
  devices: deviceProfiles,
  payer,
  trip,
};

/** What commands print with --json. */
const outputs: Readonly<Record<string, z.ZodType>> = { check: checkOutput, rules: rulesOutput };
const names = [...Object.keys(schemas), ...Object.keys(outputs)];

/** `keyout schema NAME`: the JSON Schema of a record, so that an editor can complete a file written by hand, or of what a command prints with --json. */
export const schema: Command = {
  options: {},
  run: async (call, world) => {
    const name = call.words[0] ?? '';
    const found = Object.hasOwn(schemas, name)
      ? schemas[name]
      : Object.hasOwn(outputs, name)
        ? outputs[name]
        : undefined;
    if (found === undefined) {
      throw new Problem(`There is no schema "${name}".`, 'keyout schema', `Name one of ${names.join(', ')}.`, 2);
    }
    world.say(
      JSON.stringify(
        z.toJSONSchema(found, { io: Object.hasOwn(outputs, name) ? 'output' : 'input', reused: 'inline' }),
        null,
        2,
      ),
    );
    return 0;
  },
};
