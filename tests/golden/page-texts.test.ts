import { readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { examineJob } from '../../src/operations/examine-job.ts';
import { renderHandover } from '../../src/operations/render-handover.ts';
import { typesetInvoice } from '../../src/operations/render-invoice.ts';
import { makeCreditNote } from '../pricing/worded.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { finishedSampleDay } from './finished-sample-day.ts';

const golden = (name: string) => path.join(import.meta.dirname, `${name}.txt`);
let day: Awaited<ReturnType<typeof finishedSampleDay>>;

beforeAll(async () => {
  day = await finishedSampleDay();
});
afterAll(() => rmSync(day.folder, { recursive: true, force: true }));

describe('what the pages of the sample day say', () => {
  test.each(['KX4D', 'M2WB', 'P9HC', 'ZV3E', '7QTR'])('the handover sheet of %s', async (code) => {
    const id = `2026-11-24-${code}`;
    const sheet = await renderHandover(day.book, await examineJob(day.book, await readJob(day.book, id)));
    await expect(`${sheet.text}\n`).toMatchFileSnapshot(golden(`${id}-handover`));
  });

  test.each([
    ['es', 'es-ES'],
    ['de', 'de-DE'],
  ] as const)('the handover sheet of the van in %s, on A4, in millimetres', async (language, locale) => {
    const paper = { paper: 'a4', units: { distance: 'mi', length: 'mm' } } as const;
    const book = { ...day.book, book: { ...day.book.book, language, locale, ...paper } };
    const sheet = await renderHandover(book, await examineJob(book, await readJob(book, '2026-11-24-KX4D')));
    await expect(`${sheet.text}\n`).toMatchFileSnapshot(golden(`2026-11-24-KX4D-handover-${language}`));
  });

  test.each(['INV-0001', 'INV-0002', 'INV-0003', 'INV-0004'])('the invoice %s', async (number) => {
    const invoice = day.invoices.find((each) => each.number === number);
    if (invoice === undefined) throw new Error(`no invoice ${number}`);
    await expect(`${(await typesetInvoice(day.book, invoice)).text}\n`).toMatchFileSnapshot(golden(number));
  });

  test('a credit note for the waiting on the first invoice', async () => {
    const invoice = day.invoices[0];
    if (invoice === undefined) throw new Error('no invoice');
    const credit = makeCreditNote({
      invoice,
      lines: [{ number: 2 }],
      number: 'CRN-0001',
      issued: '2026-11-26',
      because: 'waiting was not agreed',
      earlier: [],
    });
    await expect(`${(await typesetInvoice(day.book, credit)).text}\n`).toMatchFileSnapshot(golden('CRN-0001'));
  });

  test.each(['2026-11-24-KX4D-handover', 'INV-0001'])('the text that goes with %s', async (name) => {
    const text = readFileSync(path.join(day.folder, 'out', '2026-11-24', `${name}.txt`), 'utf8');
    await expect(text).toMatchFileSnapshot(golden(`${name}-covering`));
  });
});
