import { ownNetworkAddress } from '../phone/own-network-address.ts';
import { serveSigningPage } from '../phone/serve-signing-page.ts';
import { shownText } from '../phone/signing-sheet.ts';
import { localMinute } from '../quantities/local-minute.ts';
import type { Job } from '../records/job.ts';
import { sha256 } from '../storage/digest.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { recordSignature } from '../storage/record-signature.ts';
import { examineJob } from './examine-job.ts';
import type { Moment } from './moment.ts';
import { signingSheetOf } from './signing-sheet-of.ts';

/** How the page is served. */
export type SigningPlace = {
  /** null: this machine only; else an address of this machine in its network, '' for the one it has */
  readonly networkAddress: string | null;
  /** 0 for any free one */
  readonly port: number;
  readonly minutes: number;
};

/** A page that waits for a customer's signature. */
export type WaitingPage = {
  readonly url: string;
  /** the job as signed, or null when the time ran out or the page was stopped */
  readonly signed: Promise<Job | null>;
  readonly stop: () => void;
};

/**
 * Serves the page on which the customer reads, answers and signs; what is signed is stored at once.
 * @param book the open book
 * @param job the job as it stands
 * @param place where and how long the page is served
 * @param moment the moment at which it is asked, each time anew
 */
export async function signOnPage(
  book: OpenBook,
  job: Job,
  place: SigningPlace,
  moment: () => Pick<Moment, 'now' | 'today'>,
): Promise<WaitingPage> {
  const { signature: _signature, ...unsigned } = job;
  const sheet = signingSheetOf(await examineJob(book, unsigned));
  const shown = shownText(sheet);
  let signed: Job | null = null;
  const service = await serveSigningPage({
    sheet,
    address: place.networkAddress === null ? '127.0.0.1' : ownNetworkAddress(place.networkAddress || null),
    port: place.port,
    minutes: place.minutes,
    store: (answer) => {
      const { now, today } = moment();
      const signature = { ...answer, signedAt: localMinute(now, book.book.timeZone) };
      const proof = { kind: 'shown' as const, ending: 'txt', bytes: Buffer.from(shown, 'utf8') };
      signed = recordSignature(book, { job, signature, digest: sha256(shown), proof }, { now, day: today });
    },
  });
  return { url: service.url, signed: service.answered.then(() => signed), stop: () => service.stop() };
}
