import { describe, expect, test } from 'vitest';
import { vehicleText } from '../../src/pricing/invoice-parties.ts';
import { netOfTax } from '../../src/pricing/net-of-tax.ts';
import { book } from '../../src/records/book.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { payer } from '../../src/records/payer.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { trip } from '../../src/records/trip.ts';
import { soundPayer } from '../../src/rules/sound-job.ts';
import { invoiceOf, lineOf, taxCodes } from './arbitrary-invoice.ts';
import { bookOf, code, jobOf, line, sound, taxed } from './billed.ts';
import { makeCreditNote, makeInvoice, priceJob, wordingIn } from './worded.ts';

const everything = {
  name: 'Ferrin Fitting',
  installer: 'Ida Ferrin',
  address: { lines: ['4 Quay'], city: 'Harbour', postcode: '12345', country: 'US' },
  phone: '+1 555 0100',
  email: 'ida@ferrin.example',
  taxIdentifier: 'US123',
  taxRegistration: 'PERMIT 7',
  companyIdentifier: 'REG 9',
  electronicAddress: { scheme: '0088', identifier: '1234567890128' },
};
const account = {
  accountName: 'Ferrin Fitting',
  bank: 'Harbour Bank',
  iban: 'DE89370400440532013000',
  bic: 'HARBDEFF',
  accountNumber: '0012',
  routingNumber: '110000000',
  link: 'https://pay.example/{number}',
  lateInterest: 'Two percent a month after the due date.',
  terms: 'Please pay by transfer.',
};

test('an invoice carries every fact of the business, the payer, the jobs and the account, and none that is not given', () => {
  const owner = book.parse({
    ...sound,
    business: everything,
    payment: { ...sound.payment, ...account, termsDays: 10 },
  });
  const whom = payer.parse({
    ...soundPayer,
    id: 'north-lattice',
    name: 'North Lattice',
    contact: 'Accounts',
    email: 'pay@lattice.example',
    taxIdentifier: 'US456',
    companyIdentifier: 'REG 1',
    exemptionCertificate: 'EX-1',
    electronicAddress: { scheme: '0088', identifier: '5790000436071' },
    buyerReference: 'cost centre 4',
    termsDays: undefined,
  });
  const { exemptionCertificate: _none, ...business } = { ...everything, exemptionCertificate: undefined };
  const { installer: _installer, ...seller } = business;
  const make = (jobs: readonly ReturnType<typeof jobOf>[], of = { owner, whom }): IssuedInvoice =>
    makeInvoice({
      number: 'INV-0007',
      issued: '2026-06-30',
      book: of.owner,
      payer: of.whom,
      jobs: jobs.map((job) => ({ job, lines: [line('labour', 1000)] })),
      documentDiscountPercent: '0',
    });
  const first = jobOf('AAAA', {
    identity: {
      purchaseOrder: 'PO 1',
      customer: { name: 'The yard' },
      place: 'Gate 4',
      buyerReference: 'cost centre 9',
    },
    vehicle: { year: 2024, maker: 'Corvane', model: 'Haul 150' },
  } as never);
  const second = { ...jobOf('BBBB', { identity: { purchaseOrder: 'PO 2' } } as never), day: '2026-06-03' };
  const third = { ...jobOf('CCCC', { identity: { purchaseOrder: 'PO 1' } } as never), day: '2026-06-09' };
  const invoice = make([first, second, third]);
  expect(invoice).toMatchObject({
    number: 'INV-0007',
    issued: '2026-06-30',
    due: '2026-07-10',
    supplied: { from: '2026-06-03', to: '2026-06-09' },
    seller,
    payerId: 'north-lattice',
    purchaseOrder: 'PO 1, PO 2',
    buyerReference: 'cost centre 9',
    payment: { ...account, reference: 'INV-0007' },
  });
  const { contact, email, taxIdentifier, companyIdentifier, exemptionCertificate, electronicAddress } = whom;
  expect(invoice.payer).toEqual({
    id: 'north-lattice',
    name: 'North Lattice',
    address: whom.address,
    ...{ contact, email, taxIdentifier, companyIdentifier, exemptionCertificate, electronicAddress },
  });
  expect(invoice.vehicles).toEqual([
    {
      job: first.id,
      day: '2026-06-05',
      text: '2024 Corvane Haul 150',
      customer: 'The yard',
      place: 'Gate 4',
      purchaseOrder: 'PO 1',
    },
    { job: second.id, day: '2026-06-03', text: second.id, purchaseOrder: 'PO 2' },
    { job: third.id, day: '2026-06-09', text: third.id, purchaseOrder: 'PO 1' },
  ]);
  expect(make([second]).buyerReference).toBe('cost centre 4');

  const bare = make([jobOf('DDDD')], {
    owner: book.parse({
      ...sound,
      business: { name: 'F', installer: 'I', address: everything.address },
      payment: { termsDays: 30 },
    }),
    whom: payer.parse({ schema: 'keyout-payer-1', id: 'bare', name: 'Bare', address: everything.address }),
  });
  expect(Object.keys(bare)).not.toContain('purchaseOrder');
  expect(Object.keys(bare)).not.toContain('buyerReference');
  expect(bare.seller).toEqual({ name: 'F', address: bare.seller.address });
  expect(bare.payer).toEqual({ id: 'bare', name: 'Bare', address: bare.payer.address });
  expect(bare.payment).toEqual({ reference: 'INV-0007' });
  const many = Array.from({ length: 20 }, (_, index) =>
    jobOf(`AA${String(index).padStart(2, '0').replaceAll('0', 'X').replaceAll('1', 'Y')}`, {
      identity: { purchaseOrder: `A long purchase order ${index}` },
    } as never),
  );
  expect(make(many).purchaseOrder).toBeUndefined();
  const exactly = jobOf('EEEE', { identity: { purchaseOrder: 'P'.repeat(200) } } as never);
  expect(make([exactly]).purchaseOrder).toBe('P'.repeat(200));
});

test.each<[object, string]>([
  [
    {
      year: 2024,
      maker: 'Corvane',
      model: 'Haul 150',
      plate: 'VLT 4417',
      unitNumber: 'B-17',
      vin: '1NYB01230R0000001',
    },
    '2024 Corvane Haul 150, plate VLT 4417, unit B-17, VIN 1NYB01230R0000001',
  ],
  [{ maker: 'Corvane' }, 'Corvane'],
  [{ plate: 'VLT 4417' }, 'plate VLT 4417'],
  [{ unitNumber: 'B-17', vin: 'X1' }, 'unit B-17, VIN X1'],
  [{ year: 2024, model: 'Haul', vin: 'X1' }, '2024 Haul, VIN X1'],
  [{}, '2026-06-05-AAAA'],
  [{ maker: 'M'.repeat(198), model: 'x y' }, `${'M'.repeat(198)} x`],
  [{ maker: 'M'.repeat(199), model: 'x' }, 'M'.repeat(199)],
])('the vehicle %j is written in one line', (vehicle, text) => {
  const { words } = wordingIn('en');
  const job = { ...jobOf('AAAA'), vehicle };
  expect(
    vehicleText(job as never, { ...words, plate: (plate) => `plate ${plate}`, unitNumber: (unit) => `unit ${unit}` }),
  ).toBe(text);
});

describe('the account of each line', () => {
  const accountOf = (income: object, kind: 'labour' | 'parts') =>
    makeInvoice({
      number: 'draft',
      issued: '2026-06-30',
      book: bookOf(taxed([code('plain', 'S', ['20'])], { default: 'plain' }), {
        accounts: { ...sound.accounts, income },
      } as never),
      payer: soundPayer,
      jobs: [{ job: jobOf('AAAA'), lines: [line(kind, 1000)] }],
      documentDiscountPercent: '0',
    }).lines[0]?.incomeAccount;
  test('is that of its kind, else the default, else 4000', () => {
    expect(accountOf({ labour: '8400', default: '8000' }, 'labour')).toBe('8400');
    expect(accountOf({ labour: '8400', default: '8000' }, 'parts')).toBe('8000');
    expect(accountOf({}, 'parts')).toBe('4000');
  });
});

test('prices do not include tax where the book has none, whatever is ticked', () => {
  const included = (regime: 'none' | 'VAT', pricesInclude: boolean) =>
    makeInvoice({
      number: 'draft',
      issued: '2026-06-30',
      book: bookOf({ ...taxed([code('plain', 'S', ['20'])], { default: 'plain' }), regime, pricesInclude }),
      payer: soundPayer,
      jobs: [{ job: jobOf('AAAA'), lines: [line('labour', 1200)] }],
      documentDiscountPercent: '0',
    });
  expect(included('none', true)).toMatchObject({
    pricesIncludeTax: false,
    totals: { netMinorUnits: 1200, dueMinorUnits: 1200 },
  });
  expect(included('VAT', false)).toMatchObject({
    pricesIncludeTax: false,
    totals: { netMinorUnits: 1200, dueMinorUnits: 1440 },
  });
  expect(included('VAT', true)).toMatchObject({
    pricesIncludeTax: true,
    totals: { netMinorUnits: 1000, dueMinorUnits: 1200 },
  });
});

test('a line whose net amount no price can express becomes one of its amount, and keeps what was agreed', () => {
  const agreed = lineOf(1, { quantity: '3', unitPriceMinorUnits: '119', unit: 'metre', taxCode: 'reduced' } as never);
  const free = lineOf(2, { unitPriceMinorUnits: '0', taxCode: 'reduced' });
  const odd = lineOf(3, { quantity: '0.000003', unitPriceMinorUnits: '119000000', taxCode: 'reduced' });
  const { lines, grossMinorUnits } = netOfTax(
    [agreed, free, odd],
    [{ charge: true, because: 'postage', amountMinorUnits: 107, taxCode: 'reduced' }],
    taxCodes,
  );
  expect(grossMinorUnits).toBe(agreed.netMinorUnits + odd.netMinorUnits + 107);
  expect(lines[1]).toMatchObject({ quantity: '1', unitPriceMinorUnits: '0', netMinorUnits: 0 });
  expect(lines[0]?.includingTax).toEqual({ unitPriceMinorUnits: '119', discountMinorUnits: 0, amountMinorUnits: 357 });
  for (const each of lines) {
    const { quantity, unitPriceMinorUnits, baseQuantity, netMinorUnits } = each;
    expect(lineOf(1, { quantity, unitPriceMinorUnits, baseQuantity }).netMinorUnits).toBe(netMinorUnits);
  }
});

describe('a credit note', () => {
  test('names only the vehicles of its lines, and merges what is discounted alike', () => {
    const base = invoiceOf(
      [lineOf(1, { quantity: '2' }), lineOf(2, { job: '2026-01-05-BBBB' })],
      [
        { charge: false, because: 'volume', amountMinorUnits: 100, taxCode: 'goods' },
        { charge: true, because: 'volume', amountMinorUnits: 30, taxCode: 'goods' },
        { charge: false, because: 'volume', amountMinorUnits: 50, taxCode: 'goods' },
        { charge: false, because: 'other', amountMinorUnits: 7, taxCode: 'goods' },
        { charge: false, because: 'volume', amountMinorUnits: 9, taxCode: 'reduced' },
      ],
    );
    const invoice = {
      ...base,
      vehicles: [
        { job: '2026-01-05-AAAA', day: '2026-01-05', text: 'A van' },
        { job: '2026-01-05-BBBB', day: '2026-01-05', text: 'A truck' },
      ],
    };
    const credit = (lines: Parameters<typeof makeCreditNote>[0]['lines']) =>
      makeCreditNote({ invoice, lines, number: 'CRN-0001', issued: '2026-02-01', because: 'agreed', earlier: [] });
    expect(credit([{ number: 2 }]).vehicles.map((each) => each.text)).toEqual(['A truck']);
    expect(credit([{ number: 1 }]).vehicles.map((each) => each.text)).toEqual(['A van']);
    const amounts = credit('all').allowances.map((each) => [
      each.charge,
      each.because,
      each.taxCode,
      each.amountMinorUnits,
    ]);
    expect(amounts).toEqual([
      [false, 'volume', 'goods', 150],
      [true, 'volume', 'goods', 30],
      [false, 'other', 'goods', 7],
      [false, 'volume', 'reduced', 9],
    ]);
    // line 1 is 2000 of 3000: two thirds of each, and nothing of what belongs to no line
    expect(credit([{ number: 1 }]).allowances.map((each) => each.amountMinorUnits)).toEqual([100, 20, 5]);
  });

  test('keeps the reason and the code of an untaxed group', () => {
    const invoice = invoiceOf([lineOf(1, { taxCode: 'untaxed' }), lineOf(2, {})]);
    const [first, ...others] = invoice.taxes.map((each) =>
      each.taxCode === 'untaxed' ? { ...each, reasonCode: 'VATEX-EU-O' } : each,
    );
    const note = makeCreditNote({
      invoice: { ...invoice, taxes: first === undefined ? [] : [first, ...others] },
      lines: 'all',
      number: 'CRN-0001',
      issued: '2026-02-01',
      because: 'agreed',
      earlier: [],
    });
    const byCode = new Map(note.taxes.map((each) => [each.taxCode, each]));
    expect(byCode.get('untaxed')).toMatchObject({ reason: 'Not taxable here', reasonCode: 'VATEX-EU-O' });
    expect(Object.keys(byCode.get('goods') ?? {})).not.toContain('reason');
    expect(Object.keys(byCode.get('goods') ?? {})).not.toContain('reasonCode');
  });
});

describe('what is worth nothing is no line', () => {
  const day = '2026-06-05';
  const price = (changed: object, card: object, tripOf: object | null = null) => {
    const job = jobOf('AAAA', changed as never);
    return priceJob({
      job,
      trip: tripOf === null ? null : trip.parse({ schema: 'keyout-trip-1', day, ...tripOf }),
      tripJobs: [job],
      rates: rateCard.parse({ schema: 'keyout-rates-1', hourly: [{ priceMinorUnits: 6000 }], ...card }),
      book: sound,
      orderOnDay: 1,
    });
  };
  const flat = { flatRates: [{ visit: 'new fit', priceMinorUnits: 100, includedMinutes: 60 }] };
  const kinds = (...parameters: Parameters<typeof price>) => price(...parameters).map((each) => each.kind);
  const visit = { identity: { visit: 'new fit' } };

  test('a job with nothing but its visit is its flat rate', () => {
    expect(kinds(visit, flat)).toEqual(['flat rate']);
    expect(kinds({ ...visit, labour: {} }, flat)).toEqual(['flat rate']);
  });

  test('a wasted visit and a call-out at price 0, or for another visit, are none', () => {
    const wasted = { identity: { visit: 'wasted visit', wastedBecause: 'nobody there' } };
    expect(kinds(wasted, { wastedVisit: [{ priceMinorUnits: 0 }] })).toEqual([]);
    expect(kinds(wasted, { wastedVisit: [{ priceMinorUnits: 90 }] })).toEqual(['wasted visit']);
    expect(kinds(wasted, {})).toEqual([]);
    expect(kinds(visit, { ...flat, callOut: [{ visits: ['new fit'], priceMinorUnits: 0 }] })).toEqual(['flat rate']);
    expect(kinds(visit, { ...flat, callOut: [{ visits: ['swap'], priceMinorUnits: 50 }] })).toEqual(['flat rate']);
    expect(kinds(visit, { ...flat, callOut: [{ visits: ['new fit'], priceMinorUnits: 50 }] })).toEqual([
      'flat rate',
      'call-out',
    ]);
  });

  test('work within the minutes included is none; a minute beyond them is one, by the step', () => {
    const worked = (end: string, card: object = flat) =>
      kinds({ ...visit, labour: { start: `${day}T09:00`, end } }, card);
    expect(worked(`${day}T09:59`)).toEqual(['flat rate']);
    expect(worked(`${day}T10:00`)).toEqual(['flat rate']);
    expect(worked(`${day}T10:20`)).toEqual(['flat rate', 'labour']);
    expect(worked(`${day}T10:00`, { ...flat, hourly: [{ priceMinorUnits: 6000, minimumMinutes: 30 }] })).toEqual([
      'flat rate',
    ]);
  });

  test('a piece of work of no minutes is none, and one of some is charged apart', () => {
    const labour = { start: `${day}T09:00`, end: `${day}T10:00` };
    const extra = (minutes: number) =>
      price({ ...visit, labour: { ...labour, hourlyExtras: [{ what: 'Rust', minutes }] } }, flat);
    expect(extra(0).map((each) => each.kind)).toEqual(['flat rate']);
    expect(extra(15).map((each) => [each.kind, each.what, each.quantity])).toEqual([
      ['flat rate', 'New fit', '1'],
      ['labour', 'Rust', '15'],
    ]);
  });

  test('waiting within the free minutes is none, and is charged by the hour where no price of its own is given', () => {
    const waited = (waitingMinutes: number, waiting: object = {}) =>
      price(
        { ...visit, labour: { waitingMinutes, waitingBecause: 'no key' } },
        { ...flat, waiting: [{ freeMinutes: 15, stepMinutes: 15, ...waiting }] },
      )
        .filter((each) => each.kind === 'waiting')
        .map((each) => [each.quantity, each.unitPriceMinorUnits]);
    expect(waited(0)).toEqual([]);
    expect(waited(15)).toEqual([]);
    expect(waited(16)).toEqual([['15', '6000']]);
    expect(waited(31, { priceMinorUnits: 3000 })).toEqual([['30', '3000']]);
    expect(waited(20, { rounding: 'nearest' })).toEqual([]);
  });

  test('a trip within the free distance and time costs its tolls only; a job that is not on it has no share', () => {
    const card = {
      ...flat,
      travel: [
        {
          unit: 'mi',
          pricePerDistanceMinorUnits: '70',
          freeDistance: '20',
          freeTravelMinutes: 30,
          timePriceMinorUnits: 3000,
        },
      ],
    };
    const of = (changed: object) => ({
      unit: 'mi',
      distance: '20',
      travelMinutes: 30,
      tollsMinorUnits: 400,
      jobs: [{ job: `${day}-AAAA` }],
      ...changed,
    });
    expect(kinds(visit, card, of({}))).toEqual(['flat rate', 'tolls and parking']);
    expect(kinds(visit, card, of({ distance: '19' }))).toEqual(['flat rate', 'tolls and parking']);
    expect(kinds(visit, card, of({ distance: '21', tollsMinorUnits: 0 }))).toEqual(['flat rate', 'travel distance']);
    expect(kinds(visit, flat, of({ distance: '21' }))).toEqual(['flat rate', 'tolls and parking']);
    expect(kinds(visit, card, of({ jobs: [{ job: `${day}-BBBB` }] }))).toEqual(['flat rate']);
  });
});
