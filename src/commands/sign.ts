import { examineJob } from '../operations/examine-job.ts';
import { fileScan } from '../operations/file-scan.ts';
import { handOverJob } from '../operations/hand-over-job.ts';
import { Problem } from '../problem.ts';
import { localMinute } from '../quantities/local-minute.ts';
import type { Job } from '../records/job.ts';
import { readJob } from '../storage/jobs.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import { enterSignature } from '../storage/record-signature.ts';
import { signatureStands } from '../storage/signature-state.ts';
import { terminalFinding } from '../words/terminal-finding.ts';
import type { Call, Command, World } from './command.ts';
import { momentOf } from './moment-of.ts';
import { writeFinding } from './write-finding.ts';

/** `keyout sign JOB`: the customer reads, answers and signs on a page served on this machine; or a scan is filed. */
export const sign: Command = {
  options: {
    lan: { type: 'boolean', help: 'serve the page in this machine’s own network, for another screen' },
    address: { type: 'string', takes: 'ADDRESS', help: 'which address of this machine, with --lan' },
    port: { type: 'string', takes: 'NUMBER', help: 'which port (default: any free one)' },
    qr: { type: 'boolean', help: 'show the page’s address as a QR code (always with --lan)' },
    minutes: { type: 'string', takes: 'NUMBER', help: 'how long the page can be signed (default: 15)' },
    again: { type: 'boolean', help: 'sign anew although a signature stands' },
    scan: {
      type: 'string',
      takes: 'FILE',
      help: 'file a scan (PDF, JPEG, PNG) of the printed sheet, signed with a pen',
    },
    name: { type: 'string', takes: 'NAME', help: 'with --scan: who signed' },
    answer: { type: 'string', takes: 'ANSWER', help: 'with --scan: accepts, "accepts with remark" or refuses' },
    remark: { type: 'string', takes: 'TEXT', help: 'with --scan: the remark on the sheet' },
  },
  run: async (call, world) => {
    const [id, ...more] = call.words;
    if (id === undefined || more.length > 0)
      throw new Problem('One job is signed at a time.', 'keyout sign', 'Name one job, such as 2026-11-24-KX4D.', 2);
    const book = openBook(world.bookFolder);
    const job = readJob(book, id);
    const moment = () => ({ now: world.now(), day: world.today(book.book.timeZone) });
    enterSignature(book, job, moment());
    if (signatureStands(job) && call.options.again !== true)
      throw new Problem(
        `${job.signature?.name ?? 'Somebody'} has signed already, and the job is as it was.`,
        `${id}, signature`,
        'To have it signed anew, add --again.',
        1,
      );
    const { signature: _signature, ...unsigned } = job;
    const examined = await examineJob(book, unsigned);
    if (examined.open.length > 0) {
      world.tell(
        [
          `${id} cannot be signed yet:`,
          ...examined.open.map((finding) => writeFinding(terminalFinding(finding, job.vehicle))),
        ].join('\n'),
      );
      return 1;
    }
    const signed =
      typeof call.options.scan === 'string'
        ? fileScan(
            book,
            job,
            { ...call.options, scan: call.options.scan },
            moment(),
            localMinute(world.now(), book.book.timeZone),
          )
        : await waitForSignature(book, job, call, world);
    if (signed === null) {
      world.tell(`Nobody signed ${id}.`);
      return 1;
    }
    const { answer, name, signedAt, digest } = signed.signature ?? {};
    // told first: it is stored, whatever becomes of the printing
    world.tell(`${name} ${answer}: ${id}, ${signedAt?.replace('T', ' ')}. The signature is stored.`);
    const sheet = await handOverJob(book, await examineJob(book, signed), momentOf(book, world));
    world.say(world.json ? JSON.stringify({ job: id, answer, name, signedAt, digest, sheet }, null, 2) : sheet);
    return 0;
  },
};

function wholeNumber(call: Call, option: string, least: number, most: number, otherwise: number): number {
  const given = call.options[option];
  if (given === undefined) return otherwise;
  const number = typeof given === 'string' && /^\d{1,6}$/.test(given) ? Number(given) : Number.NaN;
  if (number >= least && number <= most) return number;
  throw new Problem(`"${given}" is not a number from ${least} to ${most}.`, `--${option}`, 'Write such a number.', 2);
}

async function waitForSignature(book: OpenBook, job: Job, call: Call, world: World): Promise<Job | null> {
  const { signOnPage } = await import('../operations/sign-on-page.ts');
  const { address, lan, qr } = call.options;
  const inNetwork = lan === true || address !== undefined;
  const minutes = wholeNumber(call, 'minutes', 1, 240, 15);
  const place = {
    networkAddress: inNetwork ? (typeof address === 'string' ? address : '') : null,
    port: wholeNumber(call, 'port', 0, 65_535, 0),
    minutes,
  };
  const page = await signOnPage(book, job, place, () => momentOf(book, world));
  let stopped = false;
  const stop = () => {
    stopped = true;
    page.stop();
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
  try {
    await tellAddress(page.url, { inNetwork, minutes, withCode: inNetwork || qr === true }, world);
    const signed = await page.signed;
    // main.ts knows a stop by this name
    if (stopped && signed === null) throw Object.assign(new Error('stopped'), { name: 'ExitPromptError' });
    return signed;
  } finally {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.off(signal, stop);
  }
}

async function tellAddress(
  url: string,
  how: { readonly inNetwork: boolean; readonly minutes: number; readonly withCode: boolean },
  world: World,
): Promise<void> {
  if (how.withCode) {
    const { default: QRCode } = await import('qrcode');
    world.tell(await QRCode.toString(url, { type: world.mayAsk ? 'terminal' : 'utf8', small: true }));
  }
  world.tell(
    `Open on the customer’s screen, within ${how.minutes === 1 ? 'a minute' : `${how.minutes} minutes`}; Ctrl-C stops:\n  ${url}`,
  );
  if (how.inNetwork)
    world.tell('Whoever is in this network could read along: use your own, such as a telephone’s hot spot.');
}
