import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recall } from '../../src/commands/recall.ts';
import { type RecalledJob, recalledJobs } from '../../src/operations/recalled-jobs.ts';
import type { Job } from '../../src/records/job.ts';
import { readJob, writeJob } from '../../src/storage/jobs.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { runCommand } from './run-command.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-recall-'));
const van = '2026-11-24-KX4D';
let earlier: Job;
beforeAll(() => {
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), root, { recursive: true });
  const book = openBook(root);
  const { trip: _trip, ...job } = readJob(book, van);
  earlier = {
    ...job,
    id: '2025-06-02-AAAA',
    day: '2025-06-02',
    vehicle: { ...job.vehicle, year: 2023, maker: 'Corväne' },
  };
  writeJob(book, earlier);
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

const found = (...words: string[]) => recalledJobs(openBook(root), words, null).map((each) => each.job);
const vanOf = (jobs: readonly RecalledJob[]) => jobs.find((each) => each.job === van);

describe('recall', () => {
  test.each([
    ['a model', ['haul']],
    ['maker and model in any order and case', ['HAUL', 'corvane']],
    ['two words as one', ['haul 150']],
    ['a plate without its space', ['vlt4417']],
    ['a plate with a hyphen in its place', ['VLT-4417']],
    ['a unit number', ['b-17']],
    ['a part of the VIN', ['3CD3R1004417']],
    ['letters without their marks', ['Corvane', 'haul']],
  ])('finds by %s, the newest first', (_, words) => {
    expect(found(...words)).toEqual([van, earlier.id]);
  });

  test('all words must be said of the vehicle', () => {
    expect(found('haul', '2023')).toEqual([earlier.id]);
    expect(found('haul', 'unheard')).toEqual([]);
    expect(found('---')).toEqual([]);
  });

  test('leaves out the job that asks', () => {
    const jobs = recalledJobs(openBook(root), ['haul'], earlier);
    expect(jobs.map((each) => each.job)).toEqual([van]);
  });

  test('tells how one got at the wires, what each is and how it was joined', () => {
    expect(vanOf(recalledJobs(openBook(root), ['haul'], null))).toEqual({
      job: van,
      vehicle: 'Corvane Haul 150 2024',
      opened: [
        'steering column lower shroud: 3 × cross-head screw (No. 2 screwdriver)',
        'driver knee panel: 4 × hex screw 7 mm (7 mm socket)',
      ],
      wires: [
        {
          role: 'constant',
          terminal: '30',
          where: 'ignition switch, 6-way, pin 1, red with white stripe',
          joined: 'wrapped tap, fuse 3 A',
        },
        {
          role: 'ignition',
          terminal: '15',
          where: 'ignition switch, 6-way, pin 4, pink',
          joined: 'wrapped tap, fuse 3 A',
        },
        {
          role: 'accessory',
          terminal: '75',
          where: 'ignition switch, 6-way, pin 3, orange with black stripe',
          joined: null,
        },
        { role: 'ground', terminal: '31', where: 'cowl stud left, black', joined: 'ring terminal' },
      ],
      placed: 'dash left, plastic duct behind the instrument cluster',
    });
  });

  test('says each time that it is a hint, and that nothing was found when so', async () => {
    const told = await runCommand(recall, root, ['haul', '2024']);
    expect(told.out).toMatch(/^A hint to prove again with the meter, never a fact\.\n\n2026-11-24-KX4D/);
    expect(told.out).toContain(
      '  constant    ignition switch, 6-way, pin 1, red with white stripe; wrapped tap, fuse 3 A',
    );
    expect((await runCommand(recall, root, ['unheard'])).out).toBe('No earlier job matches these words.\n');
    expect(JSON.parse((await runCommand(recall, root, ['unheard'], { json: true })).out)).toEqual([]);
  });

  test('a wire that the readings did not prove is not called by the verdict', () => {
    const truck = recalledJobs(openBook(root), ['2026-11-24-7QTR'], null)[0];
    const job = readJob(openBook(root), '2026-11-24-7QTR');
    const wrong = job.probePoints?.findIndex((point) => point.verdict === 'ignition') ?? -1;
    expect(truck?.wires[wrong]?.role).not.toBe('ignition');
  });
});
