import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { type Job, job } from '../records/job.ts';
import { readRecord } from '../records/read-record.ts';
import type { OpenBook } from './open-book.ts';
import { readJson } from './read-json.ts';
import { writeAtomically } from './write-atomically.ts';

/** The path of a job's file. */
export function jobFile(open: OpenBook, id: string): string {
  if (!/^\d{4}-\d{2}-\d{2}-[0-9A-HJ-NP-Z]{4}$/.test(id)) {
    throw new Problem(
      `"${id}" is not a job's name.`,
      'JOB',
      'A job is named by its day and four characters, such as 2026-11-24-KX4D.',
      2,
    );
  }
  return path.join(open.folder, 'jobs', id.slice(0, 4), `${id}.json`);
}

/** Whether a job's file exists. */
export function jobExists(open: OpenBook, id: string): boolean {
  return existsSync(jobFile(open, id));
}

/**
 * Reads one job.
 * @param open the open book
 * @param id the job's name
 * @throws Problem when the file is missing or wrong, or names a payer or device the book does not know
 */
export function readJob(open: OpenBook, id: string): Job {
  const file = jobFile(open, id);
  if (!existsSync(file))
    throw new Problem(`There is no job ${id}.`, file, 'Check the name, or begin the job with `keyout fit`.');
  const record = readRecord(job, readJson(file), file);
  if (record.id !== id)
    throw new Problem(`The file holds the job ${record.id}.`, `${file}, id`, 'Give the file and the id the same name.');
  if (!id.startsWith(record.day))
    throw new Problem(`The day is ${record.day}, the name says otherwise.`, `${file}, day`, 'Give both the same day.');
  const payer = record.identity.payer;
  if (payer !== undefined && !open.payers.has(payer)) {
    throw new Problem(
      `The payer "${payer}" is not known.`,
      `${file}, identity.payer`,
      `Use one of ${[...open.payers.keys()].join(', ')}, or add payers/${payer}.json.`,
    );
  }
  const profile = record.device?.profile;
  const known = open.devices.devices.map((device) => device.id);
  if (profile !== undefined && !known.includes(profile)) {
    throw new Problem(
      `The device "${profile}" is not known.`,
      `${file}, device.profile`,
      `Use one of ${known.join(', ')}, or add it to devices.json.`,
    );
  }
  return record;
}

/**
 * Writes one job, whole or not at all.
 * @param open the open book
 * @param record the job
 */
export function writeJob(open: OpenBook, record: Job): void {
  const file = jobFile(open, record.id);
  writeAtomically(file, `${JSON.stringify(readRecord(job, record, file), null, 2)}\n`);
}

/** Every job of a span of days, in the order of their times, then names. */
export function listJobs(open: OpenBook, span: { readonly from?: string; readonly to?: string }): readonly Job[] {
  const folder = path.join(open.folder, 'jobs');
  const years = existsSync(folder) ? readdirSync(folder).filter((name) => /^\d{4}$/.test(name)) : [];
  const names = years.flatMap((year) => readdirSync(path.join(folder, year)).filter((name) => name.endsWith('.json')));
  const order = (each: Job) => `${each.labour?.start ?? each.day} ${each.id}`;
  return names
    .map((name) => name.slice(0, -5))
    .filter(
      (id) =>
        (span.from === undefined || id.slice(0, 10) >= span.from) &&
        (span.to === undefined || id.slice(0, 10) <= span.to),
    )
    .map((id) => readJob(open, id))
    .sort((one, other) => (order(one) < order(other) ? -1 : 1));
}

/** The jobs of one day. */
export function jobsOnDay(open: OpenBook, day: string): readonly Job[] {
  return listJobs(open, { from: day, to: day });
}

/** Earlier jobs on the same vehicle, by VIN, else by plate. */
export function earlierJobs(open: OpenBook, record: Job): readonly Job[] {
  const { vin, plate } = record.vehicle;
  if (vin === undefined && plate === undefined) return [];
  return listJobs(open, { to: record.day }).filter(
    (each) => each.id !== record.id && (vin === undefined ? each.vehicle.plate === plate : each.vehicle.vin === vin),
  );
}

/** Other jobs that fitted a device of the same serial or IMEI, or took it out. */
export function sameDeviceJobs(open: OpenBook, record: Job): readonly Job[] {
  const { serial, imei } = record.device ?? {};
  if (serial === undefined && imei === undefined) return [];
  return listJobs(open, {}).filter(
    (each) =>
      each.id !== record.id &&
      ((serial !== undefined && (each.device?.serial === serial || each.device?.removedSerial === serial)) ||
        (imei !== undefined && each.device?.imei === imei)),
  );
}

const characters = '23456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A job name of a day that is not taken. */
export function newJobId(open: OpenBook, day: string, random: () => number): string {
  for (;;) {
    const id = `${day}-${Array.from({ length: 4 }, () => characters[Math.floor(random() * characters.length)]).join('')}`;
    if (!jobExists(open, id)) return id;
  }
}
