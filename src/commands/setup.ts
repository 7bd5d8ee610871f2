import { existsSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { askBusiness } from '../prompts/ask-business.ts';
import { askDeviceProfile } from '../prompts/ask-device-profile.ts';
import { askFor } from '../prompts/ask-for.ts';
import { askMeter } from '../prompts/ask-meter.ts';
import { askPayer } from '../prompts/ask-payer.ts';
import { askRates } from '../prompts/ask-rates.ts';
import { askTax } from '../prompts/ask-tax.ts';
import { askNumbering, askPayment } from '../prompts/ask-terms.ts';
import type { Ask } from '../prompts/question.ts';
import { resumable } from '../prompts/resumable.ts';
import type { Book } from '../records/book.ts';
import { openBook } from '../storage/open-book.ts';
import { keepSetupAnswers, readSetupAnswers, writeBookRecord, writePayer } from '../storage/write-book.ts';
import type { Command, World } from './command.ts';

/** `keyout setup`: the business, its tax, numbering, rate card, devices, payers — asked once, changed any time. */
export const setup: Command = {
  options: {},
  run: async (_call, world) => {
    const folder = world.bookFolder;
    if (!world.mayAsk) {
      throw new Problem(
        'There is no terminal to ask in.',
        'keyout setup',
        `Write ${path.join(folder, 'book.json')}, rates.json, devices.json and payers/*.json by hand; \`keyout schema book\` says what each may hold.`,
        2,
      );
    }
    if (existsSync(path.join(folder, 'book.json'))) await change(folder, world);
    else await begin(folder, world);
    world.say(`The book is in ${folder}`);
    return 0;
  },
};

async function begin(folder: string, world: World): Promise<void> {
  const known = readSetupAnswers(folder);
  world.tell(
    `A new book in ${folder}. Every answer is kept: stop with Ctrl-C, go on with \`keyout setup\`. "<" goes back.`,
  );
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const made = await resumable(
    askFor(world.plain),
    known,
    (answers) => keepSetupAnswers(folder, answers),
    async (ask) => {
      world.tell('The business');
      const who = await askBusiness(ask, null, here);
      world.tell('Tax: you say the rates; ask your tax adviser, this program gives no advice.');
      const { tax, identity } = await askTax(ask, null, {});
      world.tell('Numbers and payment');
      const numbering = await askNumbering(ask, null);
      const payment = await askPayment(ask, null);
      const book = {
        schema: 'keyout-book-1',
        ...who,
        business: { ...who.business, ...identity },
        tax,
        numbering,
        payment,
      };
      world.tell('Rate card');
      const rates = await askRates(ask, null, who);
      world.tell('The device you fit most, from its papers; more can follow.');
      const device = await askDeviceProfile(ask, [], null, who.units.length);
      world.tell('Your meter, from its manual');
      const meter = await askMeter(ask, [], null);
      world.tell('Who pays you: the first of them');
      const payer = await askPayer(ask, [], null, { business: book.business, payment, tax });
      return {
        book: { ...book, meters: [meter] },
        rates,
        devices: { schema: 'keyout-devices-1', devices: [device] },
        payer,
      };
    },
  );
  // book.json last: only then does the folder count as a book
  writeBookRecord(folder, 'rates.json', made.rates);
  writeBookRecord(folder, 'devices.json', made.devices);
  writePayer(folder, made.payer);
  writeBookRecord(folder, 'book.json', made.book);
  keepSetupAnswers(folder, null);
}

const parts = [
  'business',
  'tax',
  'numbers',
  'payment',
  'rates',
  'devices',
  'payers',
  'meters',
  'nothing more',
] as const;

async function change(folder: string, world: World): Promise<void> {
  for (;;) {
    const part = await askFor(world.plain).choose('Change what?', parts, 'nothing more');
    if (part === 'nothing more') return;
    await resumable(
      askFor(world.plain),
      [],
      () => {},
      (ask) => changePart(folder, part, ask),
    );
    world.tell(`Saved: ${part}.`);
  }
}

async function changePart(folder: string, part: (typeof parts)[number], ask: Ask): Promise<void> {
  const open = openBook(folder);
  const { book } = open;
  const writeBook = (next: Book) => writeBookRecord(folder, 'book.json', next);
  if (part === 'business') writeBook({ ...book, ...(await askBusiness(ask, book, book.timeZone)) });
  if (part === 'tax') {
    const { tax, identity } = await askTax(ask, book.tax, book.business);
    const { taxIdentifier: _i, taxRegistration: _r, ...business } = book.business;
    writeBook({ ...book, business: { ...business, ...identity }, tax });
  }
  if (part === 'numbers') writeBook({ ...book, numbering: await askNumbering(ask, book.numbering) });
  if (part === 'payment') writeBook({ ...book, payment: await askPayment(ask, book.payment) });
  if (part === 'rates') writeBookRecord(folder, 'rates.json', await askRates(ask, open.rates, book));
  if (part === 'devices') {
    const devices = open.devices.devices;
    const current = await oneOf('Which device?', devices, ask);
    const taken = devices.map((each) => each.id);
    const changed = await askDeviceProfile(ask, taken, current, book.units.length);
    writeBookRecord(folder, 'devices.json', { ...open.devices, devices: withChanged(devices, changed) });
  }
  if (part === 'payers') {
    const payers = [...open.payers.values()];
    const current = await oneOf('Which payer?', payers, ask);
    writePayer(
      folder,
      await askPayer(
        ask,
        payers.map((each) => each.id),
        current,
        book,
      ),
    );
  }
  if (part === 'meters') {
    const current = await oneOf('Which meter?', book.meters, ask);
    const changed = await askMeter(
      ask,
      book.meters.map((each) => each.id),
      current,
    );
    writeBook({ ...book, meters: withChanged(book.meters, changed) });
  }
}

type Named = { readonly id: string; readonly name: string };

async function oneOf<T extends Named>(message: string, all: readonly T[], ask: Ask): Promise<T | null> {
  const id = await ask.choose(
    message,
    ['a new one', ...all.map((each) => ({ value: each.id, name: each.name }))],
    'a new one',
  );
  return all.find((each) => each.id === id) ?? null;
}

const withChanged = <T extends Named>(all: readonly T[], changed: T): T[] =>
  all.some((each) => each.id === changed.id)
    ? all.map((each) => (each.id === changed.id ? changed : each))
    : [...all, changed];
