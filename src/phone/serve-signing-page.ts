import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Problem } from '../problem.ts';
import { sayWrongAnswer, type WrongAnswer } from '../words/page-words.ts';
import { wordsIn } from '../words/words-in.ts';
import { readAnswer, type SignedAnswer } from './read-answer.ts';
import { signingPage } from './signing-page.ts';
import type { SigningSheet } from './signing-sheet.ts';

export type SigningService = {
  readonly sheet: SigningSheet;
  /** the one address to listen on: the loopback, or one of this machine in its own network */
  readonly address: string;
  /** 0 for any free port */
  readonly port: number;
  /** how long the page can be signed, in minutes */
  readonly minutes: number;
  /** stores the answer; what it throws is told to the customer in short and ends the service */
  readonly store: (answer: SignedAnswer) => void;
};

/** A page that is being served. */
export type OpenSigning = {
  /** the page's address, which nobody can guess */
  readonly url: string;
  /** settles once: with the answer stored, with null when the time is over or it was stopped; fails as `store` failed */
  readonly answered: Promise<SignedAnswer | null>;
  readonly stop: () => void;
};

const bodyBytesMax = 400_000;
const requestSeconds = 30;

/**
 * Serves one page to one customer until it is signed, the time is over or it is stopped.
 * @param service the sheet, where to listen, for how long, and what stores the answer
 * @throws Problem when the address or port cannot be had
 */
export async function serveSigningPage(service: SigningService): Promise<OpenSigning> {
  const page = await signingPage(service.sheet);
  const say = (wrong: WrongAnswer) => sayWrongAnswer(wrong, wordsIn(service.sheet.language).page);
  // 128 bits: the address is the key to the page
  const token = randomBytes(16).toString('base64url');
  let settle: (answer: SignedAnswer | null) => void = () => {};
  let fail: (error: unknown) => void = () => {};
  const outcome = new Promise<SignedAnswer | null>((resolve, reject) => {
    settle = resolve;
    fail = reject;
  });
  let host = '';
  let isUsed = false;
  const server = createServer(
    { requestTimeout: requestSeconds * 1000, headersTimeout: 10_000 },
    (request, response) => {
      const refused = refusal(request, { host, token, isUsed });
      if (refused !== null) return reply(response, refused[0], say(refused[1]));
      if (request.method === 'GET') return replyPage(response, page);
      const tooLarge = say({ kind: 'too large', most: bodyBytesMax });
      readBody(request, response, tooLarge, (body) => {
        const answer = readAnswer(body);
        if ('wrong' in answer) return reply(response, 400, say(answer.wrong));
        if (isUsed) return reply(response, 410, say({ kind: 'signed already' }));
        isUsed = true;
        try {
          service.store(answer);
        } catch (error) {
          whenGone(response, () => fail(error));
          return reply(response, 409, error instanceof Problem ? error.what : say({ kind: 'not stored' }));
        }
        whenGone(response, () => settle(answer));
        reply(response, 200, 'Signed.');
      });
    },
  );
  server.maxConnections = 20;
  await listen(server, service);
  // as a browser writes it: without the port that it takes for granted
  host = new URL(`http://${service.address}:${(server.address() as AddressInfo).port}`).host;
  const timer = setTimeout(() => settle(null), service.minutes * 60_000);
  const answered = outcome.finally(() => {
    clearTimeout(timer);
    server.close();
    server.closeAllConnections();
  });
  return { url: `http://${host}/${token}`, answered, stop: () => settle(null) };
}

// the customer reads the reply before the service ends; one who left in between is not waited for
function whenGone(response: ServerResponse, action: () => void): void {
  if (response.closed) action();
  else response.once('close', action);
}

function listen(server: ReturnType<typeof createServer>, { address, port }: SigningService): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) =>
      reject(
        new Problem(
          error.code === 'EADDRINUSE' ? `The port ${port} is taken.` : `The page cannot be served (${error.code}).`,
          `${address}, port ${port}`,
          'Name another port with --port, or leave it out.',
          2,
        ),
      ),
    );
    server.listen(port, address, resolve);
  });
}

// compared by digest, so that the time it takes tells nothing of the token
function isToken(given: string, token: string): boolean {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(given), digest(token));
}

function refusal(
  request: IncomingMessage,
  state: { readonly host: string; readonly token: string; readonly isUsed: boolean },
): readonly [number, WrongAnswer] | null {
  if (request.headers.host !== state.host) return [421, { kind: 'another name' }];
  if (!isToken(request.url ?? '', `/${state.token}`)) return [404, { kind: 'no such page' }];
  if (state.isUsed) return [410, { kind: 'signed already' }];
  if (request.method === 'GET') return null;
  if (request.method !== 'POST') return [405, { kind: 'another method' }];
  if (request.headers.origin !== `http://${state.host}`) return [403, { kind: 'another page' }];
  if (request.headers['content-type'] !== 'application/json') return [415, { kind: 'another type' }];
  return null;
}

function readBody(request: IncomingMessage, response: ServerResponse, why: string, use: (body: string) => void): void {
  const parts: Buffer[] = [];
  let bytes = 0;
  const tooLarge = () => reply(response, 413, why);
  if (Number(request.headers['content-length'] ?? 0) > bodyBytesMax) {
    tooLarge();
    return;
  }
  request.on('data', (part: Buffer) => {
    bytes += part.length;
    if (bytes <= bodyBytesMax) parts.push(part);
    else if (!response.headersSent) tooLarge();
  });
  request.on('end', () => {
    if (!response.headersSent) use(Buffer.concat(parts).toString('utf8'));
  });
}

const headers = {
  'cache-control': 'no-store',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
};

// a connection is not kept, so that the service can end at once and a body too large is not read on
function reply(response: ServerResponse, status: number, text: string): void {
  response.writeHead(status, {
    ...headers,
    'content-type': 'text/plain; charset=utf-8',
    'content-security-policy': "default-src 'none'",
    connection: 'close',
  });
  response.end(text);
}

function replyPage(response: ServerResponse, page: (nonce: string) => string): void {
  const nonce = randomBytes(16).toString('base64');
  response.writeHead(200, {
    ...headers,
    'content-type': 'text/html; charset=utf-8',
    'content-security-policy': `default-src 'none'; script-src 'nonce-${nonce}'; style-src 'nonce-${nonce}'; connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'`,
  });
  response.end(page(nonce));
}
