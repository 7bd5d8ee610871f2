import { identifyWires } from '../evidence/identify-wires.ts';
import { Problem } from '../problem.ts';
import { askInTerminal } from '../prompts/ask-in-terminal.ts';
import { interview } from '../prompts/interview.ts';
import { type Job, job as jobRecord } from '../records/job.ts';
import { jobExists, newJobId, readJob, writeJob } from '../storage/jobs.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import type { Command, World } from './command.ts';
import { examineJob } from './examine-job.ts';
import { handOverJob } from './hand-over-job.ts';
import { writeCheck, writeFinding } from './write-finding.ts';

/** `keyout fit [JOB]`: the interactive record of one job; saves after every answer and goes on where it stopped. */
export const fit: Command = {
  name: 'fit',
  words: '[JOB]',
  summary: 'the interactive record of one job: start, or go on where it stopped',
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
    const id = call.words[0] ?? newJobId(book, day, world.random);
    const begun = jobExists(book, id)
      ? readJob(book, id)
      : jobRecord.parse({ schema: 'keyout-job-1', id, day: id.slice(0, 10) });
    world.tell(`Job ${id}. Every answer is saved; Ctrl-C stops, \`keyout fit ${id}\` goes on. "<" goes back.`);
    const told = new Set<string>();
    const around = {
      book: book.book,
      rates: book.rates,
      payers: [...book.payers.keys()],
      devices: book.devices.devices,
      evidenceOf: (job: Job) => identifyWires(job, book.book.meters),
      tell: world.tell,
    };
    const done = await interview(begun, askInTerminal, around, async (job) => {
      writeJob(book, job);
      await tellNewFindings(book, job, told, world);
    });
    return finish(book, await withReasons(book, done), world);
  },
};

// what is still missing is told by the questions themselves
async function tellNewFindings(book: OpenBook, job: Job, told: Set<string>, world: World): Promise<void> {
  const { findings } = await examineJob(book, job);
  for (const finding of findings.filter(
    (each) =>
      each.rule !== 'record-is-complete' && each.rule !== 'signature-or-reason' && !each.rule.endsWith('-is-proven'),
  )) {
    const key = `${finding.rule} ${finding.at}`;
    if (!told.has(key)) world.tell(writeFinding(finding));
    told.add(key);
  }
}

async function withReasons(book: OpenBook, done: Job): Promise<Job> {
  let job = done;
  for (const finding of (await examineJob(book, job)).open.filter((each) => each.severity === 'reason')) {
    const reason = await askInTerminal.text(
      `${finding.what} Your reason, printed on the sheet (empty to leave it open)`,
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
  if (await askInTerminal.confirm('Print the handover sheet now?', true))
    world.say(await handOverJob(book, examined, world));
  return 0;
}
