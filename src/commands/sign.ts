import { examineJob } from '../operations/examine-job.ts';
import { handOverJob } from '../operations/hand-over-job.ts';
import { signingSheetOf } from '../operations/signing-sheet-of.ts';
import { Problem } from '../problem.ts';
import type { Job } from '../records/job.ts';
import { sha256 } from '../storage/digest.ts';
import { readJob } from '../storage/jobs.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import { enterSignature, recordSignature } from '../storage/record-signature.ts';
import { signatureStands } from '../storage/signature-state.ts';
import type { Call, Command, World } from './command.ts';
import { signScan } from './sign-scan.ts';
import { writeFinding } from './write-finding.ts';

/** `keyout sign JOB`: the customer reads, answers and signs on a page served on this machine; or a scan is filed. */
export const sign: Command = {
  name: 'sign',
  words: 'JOB',
  summary: 'the customer signs on a touch screen, or a scan is filed',
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
      world.tell([`${id} cannot be signed yet:`, ...examined.open.map((finding) => writeFinding(finding))].join('\n'));
      return 1;
    }
    const signed =
      typeof call.options.scan === 'string'
        ? signScan(book, job, call, moment(), localMinute(world.now(), book.book.timeZone))
        : await signOnPage(book, job, unsigned, call, world);
    if (signed === null) {
      world.tell(`Nobody signed ${id}.`);
      return 1;
    }
    const { answer, name, signedAt, digest } = signed.signature ?? {};
    // told first: it is stored, whatever becomes of the printing
    world.tell(`${name} ${answer}: ${id}, ${signedAt?.replace('T', ' ')}. The signature is stored.`);
    const sheet = await handOverJob(book, await examineJob(book, signed), world);
    world.say(world.json ? JSON.stringify({ job: id, answer, name, signedAt, digest, sheet }, null, 2) : sheet);
    return 0;
  },
};

/** This minute on the clock of a time zone. */
function localMinute(moment: string, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('sv-SE', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(moment));
  return parts.replace(' ', 'T');
}

function wholeNumber(call: Call, option: string, least: number, most: number, otherwise: number): number {
  const given = call.options[option];
  if (given === undefined) return otherwise;
  const number = typeof given === 'string' && /^\d{1,6}$/.test(given) ? Number(given) : Number.NaN;
  if (number >= least && number <= most) return number;
  throw new Problem(`"${given}" is not a number from ${least} to ${most}.`, `--${option}`, 'Write such a number.', 2);
}

async function signOnPage(book: OpenBook, job: Job, unsigned: Job, call: Call, world: World): Promise<Job | null> {
  const { serveSigningPage } = await import('../phone/serve-signing-page.ts');
  const { shownText } = await import('../phone/signing-sheet.ts');
  const sheet = signingSheetOf(await examineJob(book, unsigned));
  const shown = shownText(sheet);
  const inNetwork = call.options.lan === true || call.options.address !== undefined;
  const minutes = wholeNumber(call, 'minutes', 1, 240, 15);
  let signed: Job | null = null;
  const service = await serveSigningPage({
    sheet,
    address: inNetwork ? await networkAddress(call) : '127.0.0.1',
    port: wholeNumber(call, 'port', 0, 65_535, 0),
    minutes,
    store: (answer) => {
      const signature = { ...answer, signedAt: localMinute(world.now(), book.book.timeZone) };
      const proof = { kind: 'shown' as const, ending: 'txt', bytes: Buffer.from(shown, 'utf8') };
      const moment = { now: world.now(), day: world.today(book.book.timeZone) };
      signed = recordSignature(book, { job, signature, digest: sha256(shown), proof }, moment);
    },
  });
  const stopped = new AbortController();
  const stop = () => {
    stopped.abort();
    service.stop();
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
  try {
    await tellAddress(service.url, { inNetwork, minutes, withCode: inNetwork || call.options.qr === true }, world);
    await service.answered;
  } finally {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.off(signal, stop);
  }
  // main.ts knows a stop by this name
  if (stopped.signal.aborted && signed === null) throw Object.assign(new Error('stopped'), { name: 'ExitPromptError' });
  return signed;
}

async function networkAddress(call: Call): Promise<string> {
  const { ownNetworkAddress } = await import('../phone/own-network-address.ts');
  return ownNetworkAddress(typeof call.options.address === 'string' ? call.options.address : null);
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
