import { request } from 'node:http';
import { connect } from 'node:net';
import { afterEach, describe, expect, test } from 'vitest';
import { ownNetworkAddress } from '../../src/phone/own-network-address.ts';
import type { SignedAnswer } from '../../src/phone/read-answer.ts';
import { type OpenSigning, serveSigningPage } from '../../src/phone/serve-signing-page.ts';
import { Problem } from '../../src/problem.ts';
import { wordsIn } from '../../src/words/words-in.ts';
import { sampleSheet } from './sample-sheet.ts';

const open: OpenSigning[] = [];
afterEach(() => {
  for (const each of open.splice(0)) each.stop();
});

async function serve(change: Partial<Parameters<typeof serveSigningPage>[0]> = {}) {
  const stored: SignedAnswer[] = [];
  const service = await serveSigningPage({
    sheet: sampleSheet,
    address: '127.0.0.1',
    port: 0,
    minutes: 1,
    store: (answer) => stored.push(answer),
    ...change,
  });
  open.push(service);
  return { ...service, stored };
}

type Sent = {
  readonly method?: string;
  readonly path?: string;
  readonly headers?: Record<string, string | undefined>;
  readonly body?: string;
};

function send(url: string, { method = 'GET', path, headers = {}, body }: Sent) {
  const { host, hostname, port, pathname, origin } = new URL(url);
  const usual: Record<string, string | undefined> =
    method === 'POST' ? { host, origin, 'content-type': 'application/json' } : { host };
  const all = Object.fromEntries(Object.entries({ ...usual, ...headers }).filter(([, value]) => value !== undefined));
  return new Promise<{ status: number; headers: Record<string, unknown>; text: string }>((resolve, reject) => {
    const sent = request(
      { hostname, port, path: path ?? pathname, method, headers: all as Record<string, string>, setHost: false },
      (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (part: string) => {
          text += part;
        });
        response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }));
      },
    );
    sent.on('error', reject);
    sent.end(body);
  });
}
const sound = JSON.stringify({ answer: 'accepts', name: 'Ada Quill' });

describe('the signing page', () => {
  test('has an address of 128 random bits, another one each time', async () => {
    const [one, other] = [await serve(), await serve()];
    const token = (url: string) => new URL(url).pathname.slice(1);
    expect(Buffer.from(token(one.url), 'base64url')).toHaveLength(16);
    expect(token(one.url)).not.toBe(token(other.url));
    expect(new URL(one.url).hostname).toBe('127.0.0.1');
  });

  test('says every word of the sheet as words, and carries everything it needs', async () => {
    const { url } = await serve();
    const { status, text } = await send(url, {});
    expect(status).toBe(200);
    expect(text).toContain('Fitting &amp; Co &lt;script&gt;alert(1)&lt;/script&gt;');
    expect(text).toContain('{{name}} &amp; &lt;b&gt;bold&lt;/b&gt;');
    expect(text).not.toMatch(/<(?:script|link|img|iframe|style)[^>]*\s(?:src|href)=/);
    expect(text).not.toContain('sourceMappingURL');
  });

  test('allows its own style and scripts by a nonce new each time, and nothing else', async () => {
    const { url } = await serve();
    const [one, other] = [await send(url, {}), await send(url, {})];
    const nonceOf = (answer: typeof one) =>
      /'nonce-([^']+)'/.exec(String(answer.headers['content-security-policy']))?.[1];
    expect(nonceOf(one)).not.toBe(nonceOf(other));
    expect(one.headers).toMatchObject({
      'content-security-policy': `default-src 'none'; script-src 'nonce-${nonceOf(one)}'; style-src 'nonce-${nonceOf(one)}'; connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'`,
      'cache-control': 'no-store',
      'referrer-policy': 'no-referrer',
      'x-content-type-options': 'nosniff',
    });
    expect(one.text.match(/nonce="([^"]+)"/g)).toHaveLength(3);
  });

  test('stores one answer, tells it, and is gone', async () => {
    const { url, answered, stored } = await serve();
    expect(await send(url, { method: 'POST', body: sound })).toMatchObject({ status: 200, text: 'Signed.' });
    expect(await answered).toEqual({ answer: 'accepts', name: 'Ada Quill' });
    expect(stored).toHaveLength(1);
    await expect(send(url, {})).rejects.toThrow(/ECONNREFUSED/);
  });

  test('of two answers at the same moment stores one', async () => {
    const { url, answered, stored } = await serve();
    const both = await Promise.allSettled([1, 2].map(() => send(url, { method: 'POST', body: sound })));
    await answered;
    const statuses = both.map((each) => (each.status === 'fulfilled' ? each.value.status : 0));
    expect(statuses.filter((status) => status === 200)).toHaveLength(1);
    expect(stored).toHaveLength(1);
  });

  test('does not end for a wrong answer: the customer may correct it', async () => {
    const { url, answered, stored } = await serve();
    expect(await send(url, { method: 'POST', body: '{"answer":"refuses","name":"Ada"}' })).toMatchObject({
      status: 400,
      text: wordsIn('en').page.wrong['remark missing'],
    });
    expect(stored).toEqual([]);
    await send(url, { method: 'POST', body: sound });
    expect(await answered).toMatchObject({ name: 'Ada Quill' });
  });

  test('tells the customer when the answer could not be stored, and ends with the reason', async () => {
    const store = () => {
      throw new Problem('The job was changed meanwhile.', 'here', 'Show it again.', 1);
    };
    const { url, answered } = await serve({ store });
    const told = expect(answered).rejects.toThrow('The job was changed meanwhile.');
    expect(await send(url, { method: 'POST', body: sound })).toMatchObject({
      status: 409,
      text: 'The job was changed meanwhile.',
    });
    await told;
  });

  test('ends without an answer when the time is over', async () => {
    const { answered } = await serve({ minutes: 0.001 });
    expect(await answered).toBeNull();
  });

  test('ends without an answer when it is stopped', async () => {
    const { answered, stop, url } = await serve();
    stop();
    expect(await answered).toBeNull();
    await expect(send(url, {})).rejects.toThrow(/ECONNREFUSED/);
  });

  test('a port that is taken is named', async () => {
    const { url } = await serve();
    await expect(serve({ port: Number(new URL(url).port) })).rejects.toThrow(/is taken/);
  });
});

describe('the signing page refuses', () => {
  const post: Sent = { method: 'POST', body: sound };
  test.each<[string, number, Sent]>([
    ['a wrong token', 404, { path: `/${'A'.repeat(22)}` }],
    ['a token cut short', 404, { path: '/A' }],
    ['no token', 404, { path: '/' }],
    ['another file', 404, { path: '/favicon.ico' }],
    ['an answer under a wrong token', 404, { ...post, path: `/${'A'.repeat(22)}` }],
    ['another host name', 421, { headers: { host: 'keyout.example' } }],
    ['another host name of the same machine', 421, { headers: { host: 'localhost:80' } }],
    ['an answer under another host name', 421, { ...post, headers: { host: 'keyout.example' } }],
    ['an answer from another page', 403, { ...post, headers: { origin: 'http://elsewhere.example' } }],
    ['an answer from a page without a name', 403, { ...post, headers: { origin: 'null' } }],
    ['an answer that does not say where it comes from', 403, { ...post, headers: { origin: undefined } }],
    ['a form', 415, { ...post, headers: { 'content-type': 'text/plain' } }],
    ['another method', 405, { method: 'PUT' }],
    ['a body too large', 413, { ...post, body: ' '.repeat(400_001) }],
    ['an empty body', 400, { ...post, body: '' }],
  ])('%s', async (_, status, sent) => {
    const { url, stored } = await serve();
    const answer = await send(url, sent);
    expect(answer.status).toBe(status);
    expect(answer.headers['cache-control']).toBe('no-store');
    expect(stored).toEqual([]);
  });

  test('a body that never says how long it is, once it is too large', async () => {
    const { url, stored } = await serve();
    const { host, hostname, port, pathname, origin } = new URL(url);
    const text = await new Promise<string>((resolve) => {
      let heard = '';
      const socket = connect(Number(port), hostname, () => {
        socket.write(
          `POST ${pathname} HTTP/1.1\r\nHost: ${host}\r\nOrigin: ${origin}\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n`,
        );
        for (let turn = 0; turn < 20; turn += 1) socket.write(`7530\r\n${' '.repeat(30_000)}\r\n`);
      });
      socket.on('data', (part) => {
        heard += part.toString();
      });
      socket.on('error', () => {});
      socket.on('close', () => resolve(heard));
    });
    expect(text).toMatch(/^HTTP\/1\.1 413 /);
    expect(stored).toEqual([]);
  });

  test('being reached on any other address of the machine', async () => {
    const { url } = await serve();
    const { port } = new URL(url);
    await expect(
      new Promise((resolve, reject) =>
        connect(Number(port), '127.0.0.2', () => resolve('reached')).on('error', reject),
      ),
    ).rejects.toThrow(/ECONNREFUSED/);
  });
});

describe('the address in the machine’s own network', () => {
  test.each([['10.0.0.5'], ['172.16.0.9'], ['172.31.255.1'], ['192.168.43.7'], ['169.254.3.3']])(
    '%s is taken when it is the only one',
    (address) => {
      expect(ownNetworkAddress(null, ['203.0.113.9', address])).toBe(address);
    },
  );

  test.each<[string, string | null, readonly string[], RegExp]>([
    ['none', null, [], /in no private network/],
    ['only public ones', null, ['203.0.113.9', '172.32.0.1'], /in no private network/],
    ['two', null, ['10.0.0.5', '192.168.1.2'], /more than one/],
    ['another machine’s', '10.0.0.6', ['10.0.0.5'], /not an address of this machine/],
    ['a public one', '203.0.113.9', ['203.0.113.9'], /not an address of this machine in a private network/],
    ['every address at once', '0.0.0.0', ['10.0.0.5'], /not an address/],
    ['a name', 'yard.example', ['10.0.0.5'], /not an address/],
  ])('%s is refused', (_, wanted, own, what) => {
    expect(() => ownNetworkAddress(wanted, own)).toThrow(what);
  });

  test('of two the named one is taken', () => {
    expect(ownNetworkAddress('192.168.1.2', ['10.0.0.5', '192.168.1.2'])).toBe('192.168.1.2');
  });
});
