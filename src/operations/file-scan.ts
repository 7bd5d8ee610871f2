import { lstatSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { type Job, type Signature, signature } from '../records/job.ts';
import { fileProblem } from '../storage/file-problem.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { printedSheetDigest, recordSignature, type SigningMoment } from '../storage/record-signature.ts';

/** What is known of a signature given with a pen; what is absent is taken from the job's own note. */
export type PenSignature = {
  /** path of the scan: PDF, JPEG or PNG */
  readonly scan: string;
  readonly answer?: unknown;
  readonly name?: unknown;
  readonly remark?: unknown;
};

const megabytesMax = 40;
const starts: readonly (readonly [string, string])[] = [
  ['%PDF-', 'pdf'],
  ['\xff\xd8\xff', 'jpg'],
  ['\x89PNG\r\n\x1a\n', 'png'],
];

/**
 * Files the scan of a printed sheet that was signed with a pen.
 * @param book the open book
 * @param job the job as it stands
 * @param pen the scan and what is written on it
 * @param moment now and today
 * @param signedAt this minute in the business's own zone
 * @returns the job with its signature
 * @throws Problem when the scan cannot be read, no sheet of this record was printed, or name or answer is missing
 */
export function fileScan(book: OpenBook, job: Job, pen: PenSignature, moment: SigningMoment, signedAt: string): Job {
  const scan = readScan(path.resolve(pen.scan));
  const digest = printedSheetDigest(book, job);
  if (digest === null)
    throw new Problem(
      'No sheet was printed of this job as it stands now.',
      job.id,
      'Print it with `keyout handover`, have that one signed, and file its scan.',
      1,
    );
  const proof = { kind: 'scan' as const, ending: scan.ending, bytes: scan.bytes };
  return recordSignature(book, { job, signature: penSignature(job, pen, signedAt), digest, proof }, moment);
}

function penSignature(job: Job, pen: PenSignature, signedAt: string): Signature {
  const noted = job.signature?.answer === 'not available' ? undefined : job.signature;
  const given = {
    answer: pen.answer ?? noted?.answer,
    name: pen.name ?? noted?.name,
    remark: pen.remark ?? noted?.remark,
  };
  for (const option of ['answer', 'name'] as const)
    if (given[option] === undefined)
      throw new Problem(
        option === 'name' ? 'Nothing says who signed.' : 'Nothing says what was answered.',
        `--${option}`,
        option === 'name'
          ? 'Add --name with the name on the sheet.'
          : 'Add --answer with accepts, "accepts with remark" or refuses.',
        2,
      );
  const { remark, ...needed } = given;
  const result = signature.safeParse({
    ...needed,
    signedAt: noted?.signedAt ?? signedAt,
    ...(remark === undefined ? {} : { remark }),
  });
  if (!result.success || result.data.answer === 'not available') {
    const issue = result.error?.issues[0];
    throw new Problem(
      `The signature cannot be filed: ${issue === undefined ? 'whoever signed is available' : issue.message}.`,
      `--${String(issue?.path[0] ?? 'answer')}`,
      'The answer is accepts, "accepts with remark" or refuses; name and remark are one line of at most 200 characters.',
      2,
    );
  }
  return result.data;
}

function readScan(file: string): { readonly bytes: Uint8Array; readonly ending: string } {
  let bytes: Buffer;
  try {
    const { size } = lstatSync(file);
    if (size > megabytesMax * 1_000_000)
      throw new Problem(
        `The scan has ${Math.round(size / 1_000_000)} MB; at most ${megabytesMax} MB are filed.`,
        file,
        'Scan it with fewer dots an inch, in grey.',
      );
    bytes = readFileSync(file);
  } catch (error) {
    throw fileProblem(error, file);
  }
  const start = bytes.subarray(0, 8).toString('latin1');
  const found = starts.find(([characters]) => start.startsWith(characters));
  if (found === undefined)
    throw new Problem('The scan is neither a PDF nor a JPEG nor a PNG file.', file, 'Save it in one of these formats.');
  return { bytes, ending: found[1] };
}
