import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PayerBalance } from '../../src/pricing/aged-balances.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import type { RecordedPayment } from '../../src/storage/record-payment.ts';
import { callKeyout } from './call-keyout.ts';
import { runKeyout } from './run-keyout.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-money-'));
const finished = path.join(root, 'finished');
beforeAll(() => {
  expect(runKeyout(['demo', finished], root).exitCode).toBe(0);
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

function freshBook() {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(finished, folder, { recursive: true });
  const run = (...words: string[]) => callKeyout([...words, '--book', folder, '--today', '2026-12-15']);
  const read = async <Value>(...words: string[]): Promise<Value> => {
    const result = await run(...words, '--json');
    expect(result.err).toBe('');
    expect(result.exitCode).toBe(0);
    return JSON.parse(result.out) as Value;
  };
  const balanceOf = async (payer: string) =>
    (await read<{ balances: PayerBalance[] }>('owed')).balances.find((each) => each.payerId === payer);
  const verified = async () => expect(await run('verify')).toMatchObject({ exitCode: 0 });
  return { folder, run, read, balanceOf, verified };
}
const pay = ['--method', 'bank transfer', '--day', '2026-12-10'];
// INV-0001 211.48 and INV-0002 275.48 to north-lattice, INV-0003 215.10 and INV-0004 93.66 to oro-mesa

describe('keyout credit', () => {
  test('whole: the note refers to its invoice, the balance is zero, the job can be billed again', async () => {
    const { run, read, balanceOf, verified } = freshBook();
    const note = await read<IssuedInvoice>('credit', 'inv-0001', '--because', 'wrong purchase order');
    expect(note).toMatchObject({
      type: 'credit note',
      number: 'CRN-0001',
      corrects: { number: 'INV-0001', because: 'wrong purchase order' },
    });
    expect((await balanceOf('north-lattice'))?.open.map((each) => each.number)).toEqual(['INV-0002']);
    const job = note.vehicles[0]?.job ?? '';
    expect((await run('bill', job)).out).toContain('INV-0005');
    expect((await run('bill', job)).err).toContain('billed already: INV-0005');
    await verified();
  });

  test('by line, by quantity and by amount, and never twice', async () => {
    const { run, read, balanceOf, verified } = freshBook();
    await read('credit', 'INV-0001', '--because', 'agreed', '--line', '1:amount=20');
    expect((await balanceOf('north-lattice'))?.totalMinorUnits).toBe(48_696 - 2000);
    await read('credit', 'INV-0001', '--because', 'agreed', '--line', '1');
    expect((await balanceOf('north-lattice'))?.totalMinorUnits).toBe(48_696 - 14_500);
    const again = await run('credit', 'INV-0001', '--because', 'agreed', '--line', '1');
    expect(again.exitCode).toBe(2);
    expect(again.err).toContain('credited already');
    await read('credit', 'INV-0001', '--because', 'the rest');
    expect((await balanceOf('north-lattice'))?.open.map((each) => each.number)).toEqual(['INV-0002']);
    expect((await run('credit', 'INV-0001', '--because', 'more')).exitCode).toBe(2);
    await verified();
  });

  test('the printed note names the invoice it corrects, and nothing issued before is changed', async () => {
    const { folder, run } = freshBook();
    const place = path.join(folder, 'issued/2026/INV-0003/invoice.json');
    const before = readFileSync(place, 'utf8');
    expect((await run('credit', 'INV-0003', '--because', 'agreed')).out).toContain('issued/2026/CRN-0001/invoice.pdf');
    expect(readFileSync(place, 'utf8')).toBe(before);
  });

  test.each([
    ['without a reason', ['credit', 'INV-0001', '--no-input'], /--because/],
    ['of an unknown number', ['credit', 'INV-0099', '--because', 'x'], /No invoice INV-0099/],
    ['of a line written wrongly', ['credit', 'INV-0001', '--because', 'x', '--line', 'two'], /--line 2/],
    ['of a line it has not', ['credit', 'INV-0001', '--because', 'x', '--line', '99'], /no line 99/],
    ['with a reason of many lines', ['credit', 'INV-0001', '--because', 'one\ntwo'], /one line/],
    ['of no invoice', ['credit'], /Exactly one invoice/],
  ])('%s is refused with what to do, and issues nothing', async (_, words, says) => {
    const { run, verified } = freshBook();
    const refused = await run(...words);
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toMatch(says);
    expect(refused.err).not.toMatch(/\n\s+at /);
    await verified();
  });
});

describe('keyout paid', () => {
  test('in part, then in full, of several invoices, oldest due first', async () => {
    const { read, balanceOf, verified } = freshBook();
    const first = await read<RecordedPayment>('paid', 'INV-0001', 'INV-0002', '--amount', '300', ...pay);
    expect(first.allocations).toEqual([
      { invoice: 'INV-0001', amountMinorUnits: 21_148 },
      { invoice: 'INV-0002', amountMinorUnits: 8852 },
    ]);
    expect((await balanceOf('north-lattice'))?.totalMinorUnits).toBe(18_696);
    await read('paid', '--payer', 'north-lattice', '--amount', '186.96', ...pay);
    expect(await balanceOf('north-lattice')).toMatchObject({ totalMinorUnits: 0, open: [] });
    await verified();
  });

  test('an amount named for an invoice is kept to', async () => {
    const { read } = freshBook();
    const payment = await read<RecordedPayment>('paid', 'INV-0001', 'INV-0002=250', '--amount', '300', ...pay);
    expect(payment.allocations).toEqual([
      { invoice: 'INV-0001', amountMinorUnits: 5000 },
      { invoice: 'INV-0002', amountMinorUnits: 25_000 },
    ]);
  });

  test('what is over is kept as credit, can be used on another invoice, and paid back', async () => {
    const { run, read, balanceOf, verified } = freshBook();
    await read('paid', 'INV-0001', '--amount', '511.48', ...pay);
    expect(await balanceOf('north-lattice')).toMatchObject({
      creditMinorUnits: 30_000,
      totalMinorUnits: 27_548 - 30_000,
    });
    await read('paid', 'INV-0002', '--use-credit', '--day', '2026-12-11');
    expect(await balanceOf('north-lattice')).toMatchObject({
      creditMinorUnits: 2452,
      totalMinorUnits: -2452,
      open: [],
    });
    expect((await run('paid', '--payer', 'north-lattice', '--refund', '--amount', '30', ...pay)).exitCode).toBe(1);
    await read('paid', '--payer', 'north-lattice', '--refund', ...pay);
    expect(await balanceOf('north-lattice')).toMatchObject({ creditMinorUnits: 0, totalMinorUnits: 0 });
    await verified();
  });

  test('a credit note on a paid invoice stands to the payer’s credit and can be used', async () => {
    const { read, balanceOf, verified } = freshBook();
    await read('paid', 'INV-0001', '--amount', '211.48', ...pay);
    await read('credit', 'INV-0001', '--because', 'agreed', '--line', '1:amount=50');
    expect(await balanceOf('north-lattice')).toMatchObject({ creditMinorUnits: 5000, totalMinorUnits: 22_548 });
    const use = await read<RecordedPayment>('paid', 'INV-0002', '--use-credit');
    expect(use.allocations).toEqual([
      { invoice: 'INV-0001', amountMinorUnits: -5000 },
      { invoice: 'INV-0002', amountMinorUnits: 5000 },
    ]);
    expect(await balanceOf('north-lattice')).toMatchObject({ creditMinorUnits: 0, totalMinorUnits: 22_548 });
    await verified();
  });

  test('the same payment typed twice is refused unless it is said to be another', async () => {
    const { run, balanceOf } = freshBook();
    const words = ['paid', 'INV-0001', '--amount', '100', '--reference', 'TR 77', ...pay];
    expect((await run(...words)).exitCode).toBe(0);
    const twice = await run(...words);
    expect(twice.exitCode).toBe(1);
    expect(twice.err).toMatch(/PAY-0001 looks like the same payment[\s\S]*--again/);
    expect((await balanceOf('north-lattice'))?.totalMinorUnits).toBe(38_696);
    expect((await run(...words, '--again')).exitCode).toBe(0);
    expect((await balanceOf('north-lattice'))?.totalMinorUnits).toBe(28_696);
  });

  test('the payments recorded can be listed, with what was taken back', async () => {
    const { run } = freshBook();
    expect((await run('paid', '--list')).out).toContain('No payment is recorded');
    await run('paid', 'INV-0001', '--amount', '100', '--reference', 'TR 77', ...pay);
    await run('paid', 'INV-0003', '--amount', '40', ...pay);
    await run('paid', '--reverse', 'PAY-0001', '--because', 'bounced');
    const { out } = await run('paid', '--list', '--payer', 'north-lattice');
    expect(out).toMatch(/PAY-0001\s+2026-12-10\s+\$100\.00.*TR 77\s+INV-0001\s+taken back by PAY-0003/);
    expect(out).not.toContain('PAY-0002');
  });

  test('credit may be used on two invoices on one day', async () => {
    const { run, verified } = freshBook();
    await run('paid', 'INV-0001', '--amount', '300', ...pay);
    expect(await run('paid', 'INV-0002', '--use-credit', '--amount', '20')).toMatchObject({ exitCode: 0 });
    expect(await run('paid', 'INV-0002', '--use-credit', '--amount', '20')).toMatchObject({ exitCode: 0 });
    await verified();
  });

  test('a payment whose credit was used since cannot be taken back before what used it', async () => {
    const { run } = freshBook();
    await run('paid', 'INV-0001', '--amount', '300', ...pay);
    await run('paid', 'INV-0002', '--use-credit');
    const refused = await run('paid', '--reverse', 'PAY-0001', '--because', 'bounced');
    expect(refused.exitCode).toBe(1);
    expect(refused.err).toMatch(/PAY-0002/);
    expect((await run('paid', '--reverse', 'PAY-0002', '--because', 'bounced')).exitCode).toBe(0);
    expect((await run('paid', '--reverse', 'PAY-0001', '--because', 'bounced')).exitCode).toBe(0);
  });

  test('a payment recorded by mistake is taken back once, and can then be recorded rightly', async () => {
    const { run, balanceOf, verified } = freshBook();
    await run('paid', 'INV-0001', '--amount', '100', ...pay);
    expect((await run('paid', '--reverse', 'PAY-0001')).err).toMatch(/--because/);
    expect((await run('paid', '--reverse', 'PAY-0001', '--because', 'other payer')).exitCode).toBe(0);
    expect((await balanceOf('north-lattice'))?.totalMinorUnits).toBe(48_696);
    expect((await run('paid', '--reverse', 'PAY-0001', '--because', 'again')).exitCode).toBe(2);
    expect((await run('paid', 'INV-0001', '--amount', '100', ...pay)).exitCode).toBe(0);
    await verified();
  });

  test.each([
    ['no amount', ['paid', 'INV-0001', '--method', 'cash', '--no-input'], /--amount/],
    ['no method', ['paid', 'INV-0001', '--amount', '5', '--no-input'], /--method/],
    ['an amount with a separator of thousands', ['paid', 'INV-0001', '--amount', '1,000.00', ...pay], /no amount/],
    [
      'a day that does not exist',
      ['paid', 'INV-0001', '--amount', '5', '--method', 'cash', '--day', '2026-02-30'],
      /not a date/,
    ],
    ['invoices of two payers', ['paid', 'INV-0001', 'INV-0003', '--amount', '5', ...pay], /different payers/],
    ['more for an invoice than is open', ['paid', 'INV-0001=300', '--amount', '300', ...pay], /\$211\.48 open/],
    ['more for the invoices than was paid', ['paid', 'INV-0001=200', '--amount', '100', ...pay], /Make them agree/],
    ['the same invoice twice', ['paid', 'INV-0001', 'INV-0001', '--amount', '5', ...pay], /named twice/],
    ['no invoice', ['paid', '--amount', '5', ...pay], /--payer/],
    [
      'too long a reference',
      ['paid', 'INV-0001', '--amount', '5', ...pay, '--reference', 'x'.repeat(201)],
      /--reference/,
    ],
    ['an unknown payer', ['paid', '--payer', 'nobody', '--amount', '5', ...pay], /north-lattice/],
  ])('%s is refused with what to do, and records nothing', async (_, words, says) => {
    const { folder, run } = freshBook();
    const before = readFileSync(path.join(folder, 'ledger.jsonl'), 'utf8');
    const refused = await run(...words);
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toMatch(says);
    expect(readFileSync(path.join(folder, 'ledger.jsonl'), 'utf8')).toBe(before);
  });
});

describe('keyout owed', () => {
  test('shows each age as of any day', async () => {
    const { run, read } = freshBook();
    const bucketsOn = async (day: string) =>
      (await read<{ balances: PayerBalance[] }>('owed', '--day', day, '--payer', 'north-lattice')).balances[0]?.buckets;
    // due 2026-12-24
    const none = { current: 0, '1-30': 0, '31-60': 0, '61-90': 0, 'over 90': 0 };
    expect(await bucketsOn('2026-12-24')).toEqual({ ...none, current: 48_696 });
    expect(await bucketsOn('2026-12-25')).toEqual({ ...none, '1-30': 48_696 });
    expect(await bucketsOn('2027-01-24')).toEqual({ ...none, '31-60': 48_696 });
    expect(await bucketsOn('2027-02-23')).toEqual({ ...none, '61-90': 48_696 });
    expect(await bucketsOn('2027-03-25')).toEqual({ ...none, 'over 90': 48_696 });
    expect((await run('owed', '--day', '2026-11-23')).out).toContain('Nobody owes anything');
    expect((await run('owed', '--day', '2026-12-30')).out).toMatch(/INV-0002\s.*\$275\.48\s+6 days overdue/);
  });
});

describe('keyout bill', () => {
  test('what stops one job does not stop the others, and is told at the end', async () => {
    const { folder, run, verified } = freshBook();
    for (const number of ['INV-0001', 'INV-0002', 'INV-0003', 'INV-0004'])
      await run('credit', number, '--because', 'billed anew');
    const place = path.join(folder, 'jobs/2026/2026-11-24-M2WB.json');
    const job = JSON.parse(readFileSync(place, 'utf8')) as Record<string, unknown>;
    writeFileSync(place, JSON.stringify({ ...job, parts: [{ what: 'Gold', quantity: '1', part: 'gold' }] }));
    const result = await run('bill', '--day', '2026-11-24', '--json');
    expect(result.exitCode).toBe(3);
    expect(result.err).toMatch(/no part "gold"/);
    expect((JSON.parse(result.out) as IssuedInvoice[]).map((each) => each.number)).toEqual([
      'INV-0005',
      'INV-0006',
      'INV-0007',
    ]);
    const day = await run('day', '2026-11-24');
    expect(day.exitCode).toBe(1);
    expect(day.out).toMatch(/unbilled: The rate card has no part "gold"/);
    await verified();
  });

  test.each([
    ['--per', 'truck'],
    ['--day', '2026-02-30'],
  ])('%s %s is refused', async (option, value) => {
    const refused = await freshBook().run('bill', option, value);
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain(value);
  });

  test('a quote shows discounts, deposit and what is due, and issues nothing', async () => {
    const { folder, run } = freshBook();
    await run('credit', 'INV-0001', '--because', 'billed anew');
    const number = '2026-11-24-KX4D';
    const place = path.join(folder, `jobs/2026/${number}.json`);
    const job = JSON.parse(readFileSync(place, 'utf8')) as Record<string, unknown>;
    writeFileSync(place, JSON.stringify({ ...job, discountPercent: '10', depositMinorUnits: 5000 }));
    const before = readFileSync(path.join(folder, 'ledger.jsonl'), 'utf8');
    const quote = await run('bill', number, '--draft');
    expect(quote.out).toMatch(/10 % off[\s\S]*net[\s\S]*total[\s\S]*paid already\s+-\$50\.00[\s\S]*due/);
    expect(readFileSync(path.join(folder, 'ledger.jsonl'), 'utf8')).toBe(before);
  });
});

test('a van issues in a series of its own, and an unknown van is refused', async () => {
  const { run, verified, folder } = freshBook();
  expect((await run('credit', 'INV-0001', '--because', 'x', '--van', 'north')).err).toMatch(/numbering\.vans/);
  const place = path.join(folder, 'book.json');
  const book = JSON.parse(readFileSync(place, 'utf8')) as { numbering: Record<string, unknown> };
  book.numbering.vans = [
    { id: 'north', invoice: { prefix: 'N-INV-', start: 100 }, creditNote: { prefix: 'N-CRN-', yearly: true } },
  ];
  writeFileSync(place, JSON.stringify(book));
  expect((await run('credit', 'INV-0001', '--because', 'x', '--van', 'north')).out).toContain('N-CRN-2026-0001');
  expect((await run('bill', '2026-11-24-KX4D', '--van', 'north')).out).toContain('N-INV-0100');
  await verified();
  book.numbering.vans = [{ id: 'north', invoice: { prefix: 'INV-2' }, creditNote: { prefix: 'N-' } }];
  writeFileSync(place, JSON.stringify(book));
  expect((await run('verify')).err).toMatch(/two series whose numbers could be the same/);
});
