import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { sign } from '../../src/commands/sign.ts';
import { examineJob } from '../../src/operations/examine-job.ts';
import { renderHandover } from '../../src/operations/render-handover.ts';
import type { SignedAnswer } from '../../src/phone/read-answer.ts';
import { type OpenSigning, serveSigningPage } from '../../src/phone/serve-signing-page.ts';
import { type SigningSheet, shownText } from '../../src/phone/signing-sheet.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { runCommand } from '../commands/run-command.ts';
import { sampleSheet } from './sample-sheet.ts';

const executablePath = '/usr/bin/chromium';
const hundredthsPerPixel = 2540 / 96;
let browser: Browser;
const open: { readonly service: OpenSigning; readonly context: BrowserContext }[] = [];

beforeAll(async () => {
  if (!existsSync(executablePath)) throw new Error('These tests need a real browser: apt-get install chromium');
  browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
});
afterEach(async () => {
  for (const { service, context } of open.splice(0)) {
    service.stop();
    await context.close();
  }
});
afterAll(() => browser?.close());

type Shown = {
  readonly page: Page;
  readonly url: string;
  readonly stored: SignedAnswer[];
  readonly requests: string[];
  readonly complaints: string[];
};

async function show(
  how: {
    readonly sheet?: SigningSheet;
    readonly width?: number;
    readonly height?: number;
    readonly store?: () => void;
  } = {},
): Promise<Shown> {
  const stored: SignedAnswer[] = [];
  const service = await serveSigningPage({
    sheet: how.sheet ?? sampleSheet,
    address: '127.0.0.1',
    port: 0,
    minutes: 2,
    store: (answer) => {
      how.store?.();
      stored.push(answer);
    },
  });
  service.answered.catch(() => {});
  const context = await browser.newContext({
    viewport: { width: how.width ?? 820, height: how.height ?? 1180 },
    hasTouch: true,
    deviceScaleFactor: 2,
  });
  open.push({ service, context });
  const page = await context.newPage();
  const [requests, complaints]: [string[], string[]] = [[], []];
  page.on('request', (request) => requests.push(`${request.method()} ${request.url()}`));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(service.url);
  return { page, url: service.url, stored, requests, complaints };
}

/** Draws one stroke with a finger; points in CSS pixels from the box's own corner. */
async function stroke(page: Page, points: readonly (readonly [number, number])[]): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await page.locator('#pad').scrollIntoViewIfNeeded();
  const box = await page.locator('#pad').boundingBox();
  if (box === null) throw new Error('the box is not shown');
  const touch = ([x, y]: readonly [number, number]) => [
    { x: box.x + x, y: box.y + y, radiusX: 4, radiusY: 4, force: 0.5 },
  ];
  for (const [index, point] of points.entries())
    await session.send('Input.dispatchTouchEvent', {
      type: index === 0 ? 'touchStart' : 'touchMove',
      touchPoints: touch(point),
    });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await session.detach();
}
const wave = Array.from({ length: 24 }, (_, index): [number, number] => [
  30 + index * 9,
  90 + 40 * Math.sin(index / 2),
]);

describe('in a real browser', () => {
  test('a customer draws with a finger and signs; strokes arrive as they were drawn', async () => {
    const { page, url, stored, requests, complaints } = await show();
    await page.getByLabel('Your name').fill('Ada Quill');
    await page.getByLabel('I accept the work as described').check();
    await stroke(page, wave);
    await stroke(page, [
      [40, 150],
      [140, 145],
      [240, 150],
    ]);
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await page.getByText('Signed and stored.').waitFor();
    expect(stored).toHaveLength(1);
    const [answer] = stored;
    expect(answer).toMatchObject({ answer: 'accepts', name: 'Ada Quill' });
    expect(answer?.strokes).toHaveLength(2);
    const box = { width: answer?.strokesWidth ?? 0, height: answer?.strokesHeight ?? 0 };
    expect(box.height).toBeGreaterThan(150 * hundredthsPerPixel);
    // the border of two pixels lies inside the box: a point may be off by that and a half
    const near = (place: number | undefined, pixels: number) =>
      expect(Math.abs((place ?? -1000) / hundredthsPerPixel - pixels)).toBeLessThan(3);
    near(answer?.strokes?.[0]?.[0], 30);
    near(answer?.strokes?.[0]?.[1], 90);
    near(answer?.strokes?.[1]?.at(-2), 240);
    near(answer?.strokes?.[1]?.at(-1), 150);
    expect(JSON.stringify(answer).length).toBeLessThan(4000);
    expect(requests).toEqual([`GET ${url}`, `POST ${url}`]);
    expect(complaints).toEqual([]);
  });

  test('every word of the digested text stands on the page, in its order', async () => {
    const { page } = await show();
    const text = (await page.locator('#sheet').allInnerTexts()).join('').replace(/\s+/g, ' ');
    let from = 0;
    for (const line of shownText(sampleSheet).split('\n').filter(Boolean)) {
      for (const part of line.startsWith('- ') ? [line.slice(2)] : line.split(/(?<=^(?:Vehicle|Owner)): /)) {
        const place = text.indexOf(part, from);
        expect(place, part).toBeGreaterThanOrEqual(from);
        from = place + part.length;
      }
    }
    expect(text.slice(from).trim()).toBe('');
  });

  test('the keyboard alone is enough: name, answer, typed signature, send', async () => {
    const { page, stored } = await show();
    const focused = () => page.evaluate('document.activeElement.id || document.activeElement.value');
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('name');
    await page.keyboard.type('Ada Quill');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowDown');
    expect(await focused()).toBe('accepts with remark');
    await page.keyboard.press('Tab');
    await page.keyboard.type('Please call\nwhen ready.');
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('typed');
    await page.keyboard.press('Space');
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('send');
    await page.keyboard.press('Enter');
    await page.getByText('Signed and stored.').waitFor();
    expect(stored).toEqual([{ answer: 'accepts with remark', name: 'Ada Quill', remark: 'Please call when ready.' }]);
    expect(await focused()).toBe('done');
  });

  test('what is missing is said beside its field, and the first such field is focused', async () => {
    const { page, stored } = await show();
    const send = page.getByRole('button', { name: 'Sign', exact: true });
    await send.click();
    for (const says of ['Please write your name.', 'Please choose one', 'Please draw your signature'])
      await page.getByText(says).waitFor();
    expect(await page.evaluate('document.activeElement.id')).toBe('name');
    expect(await page.getByLabel('Your name').getAttribute('aria-invalid')).toBe('true');
    await page.getByLabel('Your name').fill('Ada Quill');
    await page.getByLabel('I refuse it and say why').check();
    await send.click();
    expect(await page.evaluate('document.activeElement.id')).toBe('remark');
    expect(await page.getByText('Please draw your signature').count()).toBe(0);
    await page.getByLabel('Your remark').fill('The lamp is on.');
    await send.click();
    await page.getByText('Signed and stored.').waitFor();
    expect(stored).toEqual([{ answer: 'refuses', name: 'Ada Quill', remark: 'The lamp is on.' }]);
  });

  test('strokes can be taken back, and stay when the screen is turned', async () => {
    const { page, stored } = await show();
    await stroke(page, wave);
    await stroke(page, [
      [10, 10],
      [60, 60],
    ]);
    await page.getByRole('button', { name: 'Undo last stroke' }).click();
    await page.setViewportSize({ width: 1180, height: 820 });
    await page.getByLabel('Your name').fill('Ada Quill');
    await page.getByLabel('I accept the work as described').check();
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await page.getByText('Signed and stored.').waitFor();
    expect(stored[0]?.strokes).toHaveLength(1);
    expect(stored[0]?.strokes?.[0]?.length).toBeGreaterThan(20);
  });

  test('a drawing made and cleared is no signature', async () => {
    const { page } = await show();
    await page.getByLabel('Your name').fill('Ada Quill');
    await page.getByLabel('I accept the work as described').check();
    await stroke(page, wave);
    await page.getByRole('button', { name: 'Clear' }).click();
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await page.getByText('Please draw your signature').waitFor();
  });

  test('says so when the answer could not be stored', async () => {
    const { page } = await show({
      store: () => {
        throw new Error('disk full');
      },
    });
    await page.getByLabel('Your name').fill('Ada Quill');
    await page.getByLabel('I accept the work as described').check();
    await page.getByLabel('Sign with my typed name').check();
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await page.getByText('It could not be stored. Please tell the installer.').waitFor();
  });

  test('speaks the language of the sheet', async () => {
    const { page } = await show({ sheet: { ...sampleSheet, language: 'es' } });
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    await page.getByRole('button', { name: 'Firmar', exact: true }).waitFor();
  });

  test('nothing from elsewhere runs or loads, not even when it is put into the page', async () => {
    let hits = 0;
    const elsewhere = createServer((_, response) => {
      hits += 1;
      response.end();
    });
    await new Promise<void>((resolve) => elsewhere.listen(0, '127.0.0.1', resolve));
    const address = `http://127.0.0.1:${(elsewhere.address() as AddressInfo).port}/`;
    const { page } = await show();
    await page.evaluate(`(async () => {
      window.stopped = [];
      document.addEventListener('securitypolicyviolation', (event) => window.stopped.push(event.effectiveDirective));
      document.body.insertAdjacentHTML('beforeend', '<img src="${address}x.png" onerror="document.title = 1"><iframe src="${address}"></iframe><style>h1 { color: red }</style>');
      const script = document.createElement('script');
      script.textContent = 'document.title = "taken over"';
      document.body.append(script);
      await fetch('${address}').catch(() => {});
    })()`);
    await page.waitForFunction('window.stopped.length >= 6');
    expect([...new Set((await page.evaluate('window.stopped')) as string[])].sort()).toEqual([
      'connect-src',
      'frame-src',
      'img-src',
      'script-src-attr',
      'script-src-elem',
      'style-src-elem',
    ]);
    expect(await page.title()).toBe(sampleSheet.title);
    expect(hits).toBe(0);
    elsewhere.close();
  });
});

describe('from the screen to the paper', () => {
  const root = mkdtempSync(path.join(tmpdir(), 'keyout-screen-'));
  afterAll(() => rmSync(root, { recursive: true, force: true }));

  test('the strokes drawn with a finger are lines of the printed sheet, of the same form', async () => {
    cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), root, { recursive: true });
    const id = '2026-11-24-KX4D';
    const context = await browser.newContext({ viewport: { width: 820, height: 1180 }, hasTouch: true });
    const signed = await runCommand(sign, root, [id], {}, async (url) => {
      const page = await context.newPage();
      await page.goto(url);
      await page.getByLabel('Your name').fill('Ada Quill');
      await page.getByLabel('I accept the work as described').check();
      await stroke(page, wave);
      await stroke(page, [
        [40, 150],
        [240, 150],
      ]);
      await page.getByRole('button', { name: 'Sign', exact: true }).click();
      await page.getByText('Signed and stored.').waitFor();
    });
    await context.close();
    expect(signed.exitCode).toBe(0);
    const book = openBook(root);
    const { signature } = readJob(book, id);
    const sheet = await renderHandover(book, await examineJob(book, readJob(book, id)));
    const drawn = sheet.pages.flatMap((page) => page.marks.filter((mark) => mark.kind === 'polyline'));
    const shapes = drawn.map(({ steps }) => [[0, 0], ...steps]);
    expect(shapes).toHaveLength(2);
    const scale =
      (shapes[1]?.at(-1)?.[0] ?? 0) / ((signature?.strokes?.[1]?.at(-2) ?? 0) - (signature?.strokes?.[1]?.[0] ?? 0));
    for (const [place, kept] of (signature?.strokes ?? []).entries()) {
      const [left = 0, top = 0] = kept;
      expect(shapes[place]).toHaveLength(kept.length / 2);
      for (const [index, point] of (shapes[place] ?? []).entries()) {
        expect(point[0]).toBeCloseTo(((kept[2 * index] ?? 0) - left) * scale, 0);
        expect(point[1]).toBeCloseTo(((kept[2 * index + 1] ?? 0) - top) * scale, 0);
      }
    }
  });
});

describe('for every customer', () => {
  test.each([
    [320, 640],
    [820, 1180],
  ])('a screen %i wide shows all without scrolling sideways', async (width, height) => {
    const { page } = await show({ width, height });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
  });

  test('whatever is pressed is at least 44 by 44 pixels large (WCAG 2.2, 2.5.5)', async () => {
    const { page } = await show({ width: 320, height: 640 });
    const boxes = (await page.evaluate(
      `[...document.querySelectorAll('button, input[type=text], textarea, label.choice')].map((each) => { const { width, height } = each.getBoundingClientRect(); return [each.textContent.trim() || each.id, width, height]; })`,
    )) as [string, number, number][];
    expect(boxes.length).toBe(9);
    expect(boxes.filter(([, width, height]) => width < 44 || height < 44)).toEqual([]);
  });

  test('all words stand out from what is behind them by at least 7 to 1 (WCAG 2.2, 1.4.6)', async () => {
    const { page } = await show();
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    const pairs =
      (await page.evaluate(`[...document.querySelectorAll('h1,h2,p,dt,dd,li,label,legend,button,input')].filter((each) => each.textContent.trim() !== '').map((each) => {
      const behind = (node) => { const colour = getComputedStyle(node).backgroundColor; return colour !== 'rgba(0, 0, 0, 0)' || node.parentElement === null ? colour : behind(node.parentElement); };
      return [each.textContent.trim().slice(0, 30), getComputedStyle(each).color, behind(each)];
    })`)) as [string, string, string][];
    expect(pairs.length).toBeGreaterThan(25);
    expect(pairs.filter(([, ink, paper]) => contrast(ink, paper) < 7)).toEqual([]);
  });

  test('every field has a name and every group a heading for a screen reader', async () => {
    const { page } = await show();
    const tree = await page.locator('#signing').ariaSnapshot();
    for (const part of [
      'textbox "Your name"',
      'group "Your answer"',
      'radio "I accept the work as described"',
      'textbox "Your remark',
      'group "Your signature"',
      'checkbox "Sign with my typed name instead of drawing"',
      'img "Box for the drawn signature',
      'button "Sign"',
    ])
      expect(tree).toContain(part);
  });
});

/** Contrast of two opaque colours as WCAG 2.2 defines it (relative luminance of sRGB). */
function contrast(ink: string, paper: string): number {
  const luminance = (colour: string) => {
    const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
      const share = Number(part) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [light, dark] = [luminance(ink), luminance(paper)].sort((one, other) => other - one) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}
