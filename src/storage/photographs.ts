import { existsSync, lstatSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import type { Job } from '../records/job.ts';
import { sha256 } from './digest.ts';
import { fileProblem } from './file-problem.ts';
import type { OpenBook } from './open-book.ts';
import { printablePhotograph } from './printable-photograph.ts';
import { writeAtomically } from './write-atomically.ts';

/** A photograph as documents print it. */
export type PrintedPhotograph = {
  /** the file name that the job's record gives */
  readonly name: string;
  /** the caption written, else what the record says it shows */
  readonly caption: string;
  /** JPEG bytes: upright, sRGB, at print size, without any private data */
  readonly bytes: Uint8Array;
};

const megabytesMax = 40;
const plainName = /^[A-Za-z0-9][A-Za-z0-9._-]{0,100}\.(?:jpe?g|png)$/i;

/** The folder of a job's photographs and scans, inside the book. */
export function photographFolder(job: Pick<Job, 'id'>): string {
  return path.join('photos', job.id);
}

/** Names of the photographs that lie in a job's folder. */
export function photographFiles(open: OpenBook, job: Job): readonly string[] {
  const folder = path.join(open.folder, photographFolder(job));
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => entry.name)
    .sort();
}

/**
 * The photographs of a job as documents print them; each is made ready once and kept beside its original, so that a
 * document made again has the same bytes.
 * @param open the open book
 * @param job the job
 * @throws Problem naming the file and the job's field when one is missing, damaged, too large or outside the job's folder
 */
export async function readPhotographs(open: OpenBook, job: Job): Promise<readonly PrintedPhotograph[]> {
  const printed: PrintedPhotograph[] = [];
  for (const [index, { file, shows, caption }] of (job.photographs ?? []).entries()) {
    const field = `${job.id}, photographs[${index + 1}].file`;
    const original = readOriginal(path.join(open.folder, photographFolder(job)), file, field);
    const kept = path.join(open.folder, photographFolder(job), 'printed', keptName(file, original));
    if (!existsSync(kept)) writeAtomically(kept, await printablePhotograph(original, file, field));
    printed.push({ name: file, caption: caption ?? shows, bytes: readFileSync(kept) });
  }
  return printed;
}

// named by the original's content, so that another picture under the same name is made ready anew
function keptName(file: string, original: Uint8Array): string {
  return `${path.parse(file).name}-${sha256(original).slice(0, 16)}.jpg`;
}

function readOriginal(folder: string, name: string, field: string): Uint8Array {
  if (!plainName.test(name))
    throw new Problem(
      `"${name}" is not the plain name of a .jpg or .png file.`,
      field,
      'Put the photograph into the job’s folder under photos/ and name it without any folder.',
    );
  const file = path.join(folder, name);
  const where = `${file} (${field})`;
  try {
    const status = lstatSync(file);
    if (!status.isFile())
      throw new Problem(
        'The photograph is a link or a folder, not a file.',
        where,
        'Copy the photograph itself into the job’s folder.',
      );
    if (status.size > megabytesMax * 1_000_000)
      throw new Problem(
        `The photograph has ${Math.round(status.size / 1_000_000)} MB; at most ${megabytesMax} MB are read.`,
        where,
        'Save it smaller, or take another one.',
      );
    return readFileSync(file);
  } catch (error) {
    throw fileProblem(error, where);
  }
}
