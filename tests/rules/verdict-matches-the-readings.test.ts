import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { book as bookRecord } from '../../src/records/book.ts';
import { type JobInput, job as jobRecord } from '../../src/records/job.ts';
import { verdictMatchesTheReadings as rule } from '../../src/rules/verdict-matches-the-readings.ts';

const readJson = (path: string): unknown => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
const written = readJson('../../sample-jobs/jobs/2026/2026-11-24-KX4D.json') as JobInput;
const book = bookRecord.parse(readJson('../../sample-jobs/book.json'));

test.each(rule.examples.map((example) => [example.name, example] as const))('example: %s', (_name, example) => {
  const job = jobRecord.parse(example.change(written));
  const evidence = identifyWires(job, book.meters);
  const found = rule.check({
    job,
    evidence,
    book,
    profile: null,
    payer: null,
    earlier: [],
    sameDevice: [],
    photographFiles: [],
  });
  expect(found.map((hit) => hit.at)).toEqual(example.finds);
});
