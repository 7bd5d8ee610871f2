import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { Problem } from '../../src/problem.ts';
import { book } from '../../src/records/book.ts';
import { deviceProfiles } from '../../src/records/device-profile.ts';
import { job } from '../../src/records/job.ts';
import { payer } from '../../src/records/payer.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { readRecord } from '../../src/records/read-record.ts';
import { trip } from '../../src/records/trip.ts';

const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
const sample = (name: string) => JSON.parse(readFileSync(path.join(samples, name), 'utf8'));
const files = (folder: string) => readdirSync(path.join(samples, folder)).map((name) => `${folder}/${name}`);

const records = [
  ['book', book, ['book.json']],
  ['rate card', rateCard, ['rates.json']],
  ['device profiles', deviceProfiles, ['devices.json']],
  ['payer', payer, files('payers')],
  ['trip', trip, files('trips')],
  ['job', job, files('jobs/2026')],
] as const;

function problemOf(read: () => unknown): Problem {
  try {
    read();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe.each(records)('the record %s', (_, schema, names) => {
  test('reads its samples, and reads again what it wrote', () => {
    for (const name of names) {
      const once = schema.parse(sample(name));
      expect(schema.parse(JSON.parse(JSON.stringify(once)))).toEqual(once);
    }
  });

  test('refuses an unknown field by its path', () => {
    const record = { ...sample(names[0]), unheardOf: 1 };
    const problem = problemOf(() => readRecord(schema as z.ZodType, record, 'a-file.json'));
    expect(`${problem.what} ${problem.where}`).toMatch(/a-file\.json.*unheardOf|unheardOf.*a-file\.json/s);
  });

  test('refuses another version of itself', () => {
    const record = { ...sample(names[0]), schema: 'keyout-unknown-9' };
    const problem = problemOf(() => readRecord(schema as z.ZodType, record, 'a-file.json'));
    expect(problem.where).toContain('schema');
  });

  test('has a JSON Schema for editors that names its version', () => {
    const text = JSON.stringify(z.toJSONSchema(schema as z.ZodType, { io: 'input' }));
    expect(text).toContain(sample(names[0]).schema);
    expect(text).toContain('"additionalProperties":false');
  });
});

describe('a shape of the job', () => {
  const whole = sample('jobs/2026/2026-11-24-KX4D.json');
  test.each([
    ['id', { id: 'KX4D' }, /day and four/],
    ['vehicle.systemVolts', { vehicle: { systemVolts: 42 } }, /12 or 24/],
    ['supply[1].volts', { supply: [{ key: 'on', volts: '12' }] }, /number of volts/],
    [
      'probePoints[1].readings[1].key',
      { probePoints: [{ name: 'P1', readings: [{ key: 'start', volts: 1 }] }] },
      /out, off/,
    ],
    ['connections[1].method', { connections: [{ lead: 'supply', method: 'glue' }] }, /wrapped tap/],
    ['labour.start', { labour: { start: '2026-02-30T08:00' } }, /date that exists/],
    ['parts[1].quantity', { parts: [{ what: 'tie', quantity: '0' }] }, /more than zero/],
    ['photographs[1].file', { photographs: [{ file: '../a.jpg', shows: 'joint' }] }, /no folder/],
  ])('%s is refused with a sentence a tradesperson understands', (where, change, sentence) => {
    const problem = problemOf(() => readRecord(job, { ...whole, ...change }, 'job.json'));
    expect(problem.where).toBe(`job.json, ${where}`);
    expect(problem.what).toMatch(sentence);
  });
});
