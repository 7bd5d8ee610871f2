import path from 'node:path';
import { identifyWires } from '../evidence/identify-wires.ts';
import { billedOfTrip } from '../operations/billed-of-trip.ts';
import { examineJob } from '../operations/examine-job.ts';
import { handOverJob } from '../operations/hand-over-job.ts';
import { recalledJobs } from '../operations/recalled-jobs.ts';
import { Problem } from '../problem.ts';
import { amend, parts } from '../prompts/amend.ts';
import { askFor } from '../prompts/ask-for.ts';
import { askTrip, joinTrip } from '../prompts/ask-trip.ts';
import { interview, nextQuestion } from '../prompts/interview.ts';
import { mayTell } from '../prompts/may-tell.ts';
import type { Around } from '../prompts/question.ts';
import { type Job, job as jobRecord } from '../records/job.ts';
import { signedRecordDigest } from '../storage/digest.ts';
import { issuedForJob } from '../storage/issued.ts';
import { jobExists, jobsOnDay, newJobId, readJob, writeJob } from '../storage/jobs.ts';
import { readLedger } from '../storage/ledger.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import { photographFiles, photographFolder } from '../storage/photographs.ts';
import { signatureState } from '../storage/signature-state.ts';
import { readTrip, writeTrip } from '../storage/trips.ts';
import { writePayer } from '../storage/write-book.ts';
import { terminalFinding } from '../words/terminal-finding.ts';
import { vehicleName } from '../words/vehicle-name.ts';
import type { Command, World } from './command.ts';
import { momentOf } from './moment-of.ts';
import { writeCheck } from './write-check.ts';
import { writeFinding } from './write-finding.ts';

/** `keyout fit [JOB [PART]]`: the interactive record of one job; saves after every answer, goes on where it stopped, and corrects what is recorded. */
export const fit: Command = {
  options: {},
  run: async (call, world) => {
    if (!world.mayAsk) {
      throw new Problem(
        'There is no terminal to ask in.',
        'keyout fit',
        'Write the job as a file instead: jobs/YEAR/JOB.json in the book; `keyout schema job` says what it may hold.',
        2,
      );
    }
    const book = openBook(world.bookFolder);
    const day = world.today(book.book.timeZone);
    const id = call.words[0] ?? (await chooseJob(book, day, world));
    const exists = jobExists(book, id);
    const begun = exists ? readJob(book, id) : jobRecord.parse({ schema: 'keyout-job-1', id, day: id.slice(0, 10) });
    if (exists && (call.words[1] !== undefined || (await isRecorded(book, begun))))
      return correct(book, begun, call.words[1], world);
    world.tell(
      `Job ${id}. Every answer is saved; Ctrl-C stops, \`keyout fit ${id}\` goes on. Escape or "<" goes back, "-" takes a usual answer away.`,
    );
    const told = new Set<string>();
    const done = await interview(begun, askFor(world.plain), aroundOf(book, id, world), async (job) => {
      writeJob(book, job);
      if (job.interview?.draft === undefined) await tellNewFindings(book, job, told, world);
    });
    return finish(book, await withReasons(book, await travel(book, done, world), world), world);
  },
};

// nothing left to ask, or written by hand and complete
async function isRecorded(book: OpenBook, job: Job): Promise<boolean> {
  if (job.interview !== undefined) return nextQuestion(job) === undefined;
  return (await examineJob(book, job)).open.every((finding) => finding.rule !== 'record-is-complete');
}

const partName = (id: string) => id.replaceAll('-', ' ');

async function correct(book: OpenBook, job: Job, named: string | undefined, world: World): Promise<0 | 1> {
  const ask = askFor(world.plain);
  const all = parts(job);
  const nothing = 'nothing, leave it as it is';
  const part =
    named ??
    (await ask.choose(
      `${job.id} is recorded. What is to be corrected?`,
      [...all.map((id) => ({ value: id, name: partName(id) })), { value: nothing, name: nothing }],
      nothing,
    ));
  if (part === nothing) return finish(book, job, world);
  if (!all.includes(part))
    throw new Problem(
      `"${part}" is no part of ${job.id}.`,
      'keyout fit JOB PART',
      `Name one of these: ${all.join(', ')}.`,
      2,
    );
  world.tell(`Correcting ${partName(part)} of ${job.id}. Nothing is changed before all of it is answered.`);
  const amended = await amend(job, part, ask, aroundOf(book, job.id, world));
  for (const follows of followsFrom(book, job, amended)) world.tell(`  ${follows}`);
  const word = await ask.text('Keep the change? Type yes to keep it', '');
  if (word.trim().toLowerCase() !== 'yes') {
    world.tell(`Nothing was changed in ${job.id}.`);
    return 1;
  }
  writeJob(book, amended);
  return finish(book, await withReasons(book, amended, world), world);
}

function followsFrom(book: OpenBook, job: Job, amended: Job): readonly string[] {
  const { signature } = job;
  const invoice = issuedForJob(book, job.id);
  const isVoid = signatureState(job) === 'stands' && signatureState(amended) === 'void';
  const handedOver =
    signedRecordDigest(job) !== signedRecordDigest(amended) &&
    readLedger(book).some((entry) => entry.event === 'handed over' && entry.job === job.id);
  return [
    ...(isVoid ? [`The signature${signature?.name === undefined ? '' : ` of ${signature.name}`} becomes void.`] : []),
    ...(handedOver ? ['The sheet that was handed over no longer says what the record says: hand it over again.'] : []),
    ...(invoice === null
      ? []
      : [`${invoice.invoice.number} is issued; where this changes what is charged, credit it and bill again.`]),
  ];
}

async function chooseJob(book: OpenBook, day: string, world: World): Promise<string> {
  const begun = jobsOnDay(book, day).filter((job) => job.interview !== undefined && nextQuestion(job) !== undefined);
  const fresh = newJobId(book, day, world.random);
  if (begun.length === 0) return fresh;
  return askFor(world.plain).choose(
    'Which job?',
    [
      ...begun.map((job) => ({ value: job.id, name: `go on with ${job.id}  ${vehicleName(job.vehicle)}` })),
      { value: fresh, name: 'a new job' },
    ],
    begun[0]?.id ?? fresh,
  );
}

function aroundOf(book: OpenBook, id: string, world: World): Around {
  const payers = new Map(book.payers);
  const zone = book.book.timeZone;
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    dateStyle: 'short',
    timeStyle: 'short',
    hourCycle: 'h23',
  }).format(new Date(world.now()));
  return {
    book: book.book,
    rates: book.rates,
    payers: () => [...payers.values()],
    keepPayer: (payer) => {
      payers.set(payer.id, payer);
      writePayer(book.folder, payer);
    },
    devices: book.devices.devices,
    evidenceOf: (job) => identifyWires(job, book.book.meters),
    tell: world.tell,
    clock: parts.startsWith(id.slice(0, 10)) ? parts.slice(-5) : '',
    photographs: (job) => ({
      folder: path.join(book.folder, photographFolder(job)),
      files: photographFiles(book, job),
    }),
    hints: (job) => {
      const words = [job.vehicle.maker, job.vehicle.model].filter((word) => word !== undefined);
      if (words.length === 0) return [];
      return recalledJobs(book, words, job)
        .slice(0, 3)
        .flatMap((each) =>
          each.wires
            .filter((wire) => wire.role !== 'not proven')
            .map((wire) => `${each.job}: ${wire.role} at ${wire.where} — prove it again`),
        );
    },
  };
}

async function travel(book: OpenBook, job: Job, world: World): Promise<Job> {
  if (job.trip === undefined) return job;
  const trip = readTrip(book, job.trip);
  if (trip === null) {
    const made = await askTrip(askFor(world.plain), book.book, job.trip, [job.id]);
    if (made !== null) writeTrip(book, made);
    return job;
  }
  const billed = trip.jobs.some((each) => each.job === job.id) ? [] : billedOfTrip(book, trip);
  if (billed.length > 0) {
    world.tell(`  The travel of ${trip.day} is billed already (${billed.join(', ')}): this job is left out of it.`);
    const { trip: _trip, ...alone } = job;
    writeJob(book, alone);
    return alone;
  }
  const joined = await joinTrip(askFor(world.plain), trip, job.id);
  if (joined !== trip) writeTrip(book, joined);
  return job;
}

// a finding is told as soon as its subject was asked, once
async function tellNewFindings(book: OpenBook, job: Job, told: Set<string>, world: World): Promise<void> {
  const { findings } = await examineJob(book, job);
  for (const finding of findings.filter((each) => mayTell(each.rule, job))) {
    const key = `${finding.rule} ${finding.at}`;
    if (!told.has(key)) world.tell(writeFinding(terminalFinding(finding, job.vehicle)));
    told.add(key);
  }
}

async function withReasons(book: OpenBook, done: Job, world: World): Promise<Job> {
  let job = done;
  for (const finding of (await examineJob(book, job)).open.filter((each) => each.severity === 'reason')) {
    const reason = await askFor(world.plain).text(
      `${terminalFinding(finding, job.vehicle).what} Your reason, printed on the sheet (empty to leave it open)`,
      '',
    );
    if (reason === '') continue;
    job = {
      ...job,
      answers: [...job.answers, { rule: finding.rule, ...(finding.at === '' ? {} : { at: finding.at }), reason }],
    };
    writeJob(book, job);
  }
  return job;
}

async function finish(book: OpenBook, job: Job, world: World): Promise<0 | 1> {
  const examined = await examineJob(book, job);
  world.tell(writeCheck(examined));
  if (examined.open.length > 0) {
    world.tell(`${job.id} is saved; it cannot be handed over yet.`);
    return 1;
  }
  if (await askFor(world.plain).confirm('Print the handover sheet now?', true))
    world.say(await handOverJob(book, examined, momentOf(book, world)));
  world.tell(`Next: \`keyout bill ${job.id}\` issues its invoice, \`keyout day\` finishes the whole day.`);
  return 0;
}
