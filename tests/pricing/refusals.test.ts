import { describe, expect, test } from 'vitest';
import { flatLine } from '../../src/pricing/flat-rate.ts';
import { settingOf } from '../../src/pricing/setting.ts';
import { Problem } from '../../src/problem.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { trip } from '../../src/records/trip.ts';
import { invoiceOf, lineOf } from './arbitrary-invoice.ts';
import { bookOf, code, invoice, jobOf, line, sound, taxed } from './billed.ts';
import { makeCreditNote, priceJob, wordingIn } from './worded.ts';

/** What a person reads of a refusal: what is wrong, where, and what to do. */
function refusal(attempt: () => unknown): readonly string[] {
  try {
    attempt();
  } catch (error) {
    if (error instanceof Problem) return [error.what, error.where, error.whatToDo];
    throw error;
  }
  return [];
}

const rates = (changed: object) =>
  rateCard.parse({ schema: 'keyout-rates-1', hourly: [{ priceMinorUnits: 6000 }], ...changed });
const price = (changed: object, card: object, tripOf: object | null = null) => {
  const job = jobOf('AAAA', changed);
  return priceJob({
    job,
    trip: tripOf === null ? null : trip.parse({ schema: 'keyout-trip-1', day: '2026-06-05', ...tripOf }),
    tripJobs: [job],
    rates: rates(card),
    book: sound,
    orderOnDay: 1,
  });
};
const hourly = { hourly: [{ priceMinorUnits: 6000 }] };
const timed = { labour: { start: '2026-06-05T09:00', end: '2026-06-05T10:00' } };

test.each<[string, () => unknown, string[]]>([
  [
    'no flat rate and no hours',
    () => price({}, hourly),
    [
      'No flat rate fits the job, so that its work is charged by the hour, and no hours are recorded.',
      '2026-06-05-AAAA, labour.start and labour.end',
      'Record when the work began and ended, or add a flat rate for this kind of visit to rates.json.',
    ],
  ],
  [
    'no hourly price on the day',
    () => price(timed, { hourly: [{ priceMinorUnits: 6000, to: '2026-06-04' }] }),
    ['No hourly price is valid on 2026-06-05.', 'rates.json, hourly', 'Add one whose dates include that day.'],
  ],
  [
    'an extra that the card does not have',
    () =>
      price(
        { labour: { ...timed.labour, extras: [{ extra: 'buzzer' }, { extra: 'reader' }] } },
        { ...hourly, extras: [{ id: 'buzzer', name: 'Buzzer', priceMinorUnits: 100 }] },
      ),
    [
      'The rate card has no extra "reader" on 2026-06-05.',
      '2026-06-05-AAAA, labour.extras[2].extra',
      'Add it to rates.json, or take it off the job.',
    ],
  ],
  [
    'a part that the card does not have',
    () => price({ ...timed, parts: [{ what: 'Holder', part: 'holder', quantity: '1' }] }, hourly),
    [
      'The rate card has no part "holder" on 2026-06-05.',
      '2026-06-05-AAAA, parts[1].part',
      'Add it to rates.json, or give what one cost on the job (0 if it was free).',
    ],
  ],
  [
    'a part with neither price nor cost',
    () => price({ ...timed, parts: [{ what: 'Holder', quantity: '1' }] }, hourly),
    [
      '"Holder" has no price: neither a part of the rate card nor a cost is named.',
      '2026-06-05-AAAA, parts[1].unitCostMinorUnits',
      'Add it to rates.json, or give what one cost on the job (0 if it was free).',
    ],
  ],
  [
    'a trip in another unit than the rate',
    () =>
      price(
        timed,
        { ...hourly, travel: [{ unit: 'km', pricePerDistanceMinorUnits: '42' }] },
        { unit: 'mi', distance: '10', travelMinutes: 20, shareBy: 'equally', jobs: [{ job: '2026-06-05-AAAA' }] },
      ),
    [
      'The trip is in mi, the travel rate in km.',
      'trips/2026-06-05.json, unit',
      'Give both the same unit; nothing is converted by guess.',
    ],
  ],
  [
    'a trip shared by a distance that a job lacks',
    () =>
      price(timed, hourly, {
        unit: 'mi',
        distance: '10',
        travelMinutes: 20,
        shareBy: 'distance',
        jobs: [{ job: '2026-06-05-AAAA' }],
      }),
    [
      'The trip is shared by distance, and 2026-06-05-AAAA has none.',
      'trips/2026-06-05.json, jobs[1].distance',
      'Give every job its distance, or share the trip equally.',
    ],
  ],
  [
    'a trip shared by a time that a job lacks',
    () =>
      price(
        { identity: { visit: 'new fit' } },
        { flatRates: [{ visit: 'new fit', priceMinorUnits: 100 }], ...hourly },
        {
          unit: 'mi',
          distance: '10',
          travelMinutes: 20,
          shareBy: 'time',
          jobs: [{ job: '2026-06-05-AAAA' }],
        },
      ),
    [
      'The trip is shared by time, and 2026-06-05-AAAA has no times yet.',
      'trips/2026-06-05.json, jobs[1]',
      'Record when its work began and ended, or share the trip equally.',
    ],
  ],
  [
    'an end before the begin',
    () => price({ labour: { start: '2026-06-05T10:00', end: '2026-06-05T09:00' } }, hourly),
    [
      'The work ends (2026-06-05T09:00) before it begins (2026-06-05T10:00).',
      '2026-06-05-AAAA, labour.end',
      'Correct the times; work past midnight ends on the next day.',
    ],
  ],
  [
    'nothing to charge',
    () => invoice(bookOf({}), []),
    [
      'Nothing is charged for 2026-06-05-AAAA.',
      'rates.json',
      'Add a price for this kind of visit (0 if it is free), or leave the job unbilled.',
    ],
  ],
  [
    'a kind of line without a tax code',
    () => invoice(bookOf(taxed([code('plain', 'S', ['20'])], { parts: 'plain' })), [line('labour', 100)]),
    [
      'No tax code is given for lines of the kind "labour" on 2026-06-05.',
      'book.json, tax.lines',
      'Name one of the codes in tax.codes for "labour" or for "default", valid on that day.',
    ],
  ],
  [
    'a payer’s tax code that the book does not have',
    () =>
      invoice(bookOf(taxed([code('plain', 'S', ['20'])], { default: 'plain' })), [line('labour', 100)], {
        payer: { id: 'someone', taxCode: 'other' },
      }),
    [
      'The payer\'s tax code "other" is none of the book\'s on 2026-06-05.',
      'payers/someone.json, taxCode',
      'Name one of the codes in book.json, tax.codes, that is valid on that day.',
    ],
  ],
  ...(['AE', 'K'] as const).map((category): [string, () => unknown, string[]] => [
    `category ${category} for a payer without a tax identifier`,
    () =>
      invoice(bookOf(taxed([code('reverse', category)], { default: 'reverse' })), [line('labour', 100)], {
        payer: { id: 'someone', name: 'Somebody', taxIdentifier: undefined },
      }),
    [
      `Somebody is billed without tax (category ${category}), for which its tax identifier must be printed.`,
      'payers/someone.json, taxIdentifier',
      'Add the identifier with its country prefix, or another tax code for this payer.',
    ],
  ]),
  [
    'a rate in a category that has none',
    () => invoice(bookOf(taxed([code('zero', 'Z', ['5', '2.5'])], { default: 'zero' })), [line('labour', 100)]),
    [
      'A tax code of category Z has a rate of 7.5 %; only category S has one.',
      'book.json, tax.codes "zero", jurisdictions',
      'Use category S, or take its rates away.',
    ],
  ],
  [
    'an exemption without a reason',
    () => invoice(bookOf(taxed([code('free', 'E')], { default: 'free' })), [line('labour', 100)]),
    [
      'The tax code "free" is exempt (category E) and says no reason, which an invoice must print.',
      'book.json, tax.codes "free", reason',
      'Write the reason as it should be printed, such as the small-business rule or the section of the law.',
    ],
  ],
  ...['-1', '100.5'].map((percent): [string, () => unknown, string[]] => [
    `a discount of ${percent} %`,
    () =>
      invoice(bookOf(taxed([code('plain', 'S', ['20'])], { default: 'plain' })), [line('labour', 100)], {
        job: { discountPercent: percent } as never,
      }),
    [
      `A discount of ${percent} % cannot be given.`,
      '2026-06-05-AAAA, discountPercent',
      'Give a number between 0 and 100.',
    ],
  ]),
])('%s is refused with what, where and what to do', (_, attempt, expected) => {
  expect(refusal(attempt)).toEqual(expected);
});

describe('a credit note refuses with what, where and what to do', () => {
  const charged = invoiceOf([
    lineOf(1, { what: 'Wire', quantity: '4', unitPriceMinorUnits: '2500' }),
    lineOf(2, { what: 'Labour', unit: 'minute', quantity: '90', unitPriceMinorUnits: '8800', baseQuantity: '60' }),
  ]);
  const credit = (lines: Parameters<typeof makeCreditNote>[0]['lines'], changed: object = {}) =>
    makeCreditNote({
      invoice: charged,
      lines,
      number: 'CRN-0001',
      issued: '2026-02-10',
      because: 'agreed',
      earlier: [],
      ...changed,
    });
  const atLine = (line: number) => `credit of INV-0001, line ${line}`;
  const noMore = 'Credit no more than that, or name the line without a figure to credit all that is left.';

  test.each<[string, () => unknown, string[]]>([
    [
      'too much of a quantity',
      () => credit([{ number: 1, quantity: '5' }]),
      ['Line 1 of INV-0001 ("Wire") has 4 each left to credit.', atLine(1), noMore],
    ],
    [
      'too high an amount',
      () => credit([{ number: 2, amountMinorUnits: 13_201 }]),
      ['Line 2 of INV-0001 ("Labour") has 13200 minor units of USD left to credit.', atLine(2), noMore],
    ],
    ...[0, -5, 1.5].map((amount): [string, () => unknown, string[]] => [
      `an amount of ${amount}`,
      () => credit([{ number: 1, amountMinorUnits: amount }]),
      [
        'An amount to credit must be more than zero, in whole minor units.',
        atLine(1),
        'Give the amount without tax; 8500 means 85.00.',
      ],
    ]),
    ...['0', '1e3', '-1', '1.1234567', '1234567890123', '1.', '.5', ' 1', '1x'].map(
      (text): [string, () => unknown, string[]] => [
        `a quantity of "${text}"`,
        () => credit([{ number: 1, quantity: text }]),
        [`"${text}" is no quantity to credit.`, atLine(1), 'Give a number above zero with at most six decimals.'],
      ],
    ),
    [
      'a line that is not there',
      () => credit([{ number: 9 }]),
      ['INV-0001 has no line 9.', atLine(9), 'Name one of its lines.'],
    ],
    [
      'a line twice',
      () => credit([{ number: 1 }, { number: 1 }]),
      ['Line 1 is named twice.', atLine(1), 'Name each line once.'],
    ],
    [
      'a quantity and an amount',
      () => credit([{ number: 1, quantity: '1', amountMinorUnits: 1 }]),
      ['Both a quantity and an amount are given.', atLine(1), 'Give one of them.'],
    ],
    [
      'a line that is credited already',
      () => credit([{ number: 1 }], { earlier: [credit([{ number: 1 }])] }),
      ['Line 1 of INV-0001 is credited already.', atLine(1), 'Leave it out.'],
    ],
    [
      'what is credited in full',
      () => credit('all', { earlier: [credit('all')] }),
      ['Nothing of INV-0001 is left to credit.', 'credit of INV-0001', 'It is credited in full already.'],
    ],
    [
      'a credit note',
      () => credit('all', { invoice: credit('all') }),
      ['CRN-0001 is a credit note.', 'credit of CRN-0001', 'Only invoices are credited.'],
    ],
    [
      'no reason',
      () => credit('all', { because: ' \n' }),
      ['No reason is given.', 'credit of INV-0001', 'Say why it is credited.'],
    ],
  ])('%s', (_, attempt, expected) => {
    expect(refusal(attempt)).toEqual(expected);
  });

  test('but takes a quantity of two figures and six decimals, and an amount that is all that is left', () => {
    const many = invoiceOf([lineOf(1, { quantity: '40', unitPriceMinorUnits: '2500' })]);
    expect(credit([{ number: 1, quantity: '12.345678' }], { invoice: many }).lines[0]).toMatchObject({
      quantity: '12.345678',
      netMinorUnits: 30_864,
    });
    expect(credit([{ number: 2, amountMinorUnits: 13_200 }]).totals.netMinorUnits).toBe(13_200);
  });

  test('and says of each line how much of which line it credits, in the words of the invoice', () => {
    const { creditOf } = wordingIn('en').words;
    const first = credit([
      { number: 1, quantity: '1' },
      { number: 2, amountMinorUnits: 700 },
    ]);
    expect(first.lines.map((each) => each.because)).toEqual([
      creditOf(1, 'INV-0001', false),
      creditOf(2, 'INV-0001', true),
    ]);
    expect(first.lines[1]).toMatchObject({
      quantity: '1',
      unit: 'each',
      unitPriceMinorUnits: '700',
      baseQuantity: '1',
      discountBecause: '',
    });
    expect(credit([{ number: 1 }]).lines[0]?.because).toBe('as agreed');
    expect(credit([{ number: 1 }], { earlier: [first] }).lines[0]?.because).toBe(creditOf(1, 'INV-0001', false));
    expect(credit('all', { because: '  agreed  ' }).corrects?.because).toBe('agreed');
  });
});

describe('a flat rate says what it is for', () => {
  const setting = settingOf(sound, wordingIn('en'));
  const flat = (changed: object, order = 1) => flatFor('new fit', changed, order);
  const flatFor = (visit: 'new fit' | undefined, changed: object, order: number) => {
    const [rate] = rates({ flatRates: [{ visit: 'new fit', priceMinorUnits: 14_500, ...changed }] }).flatRates;
    if (rate === undefined) throw new Error('no rate');
    const { what, because, unitPriceMinorUnits } = flatLine(rate, visit, order, setting);
    return [what, because, unitPriceMinorUnits];
  };
  const { words } = setting;

  test('class, device, minutes included', () => {
    expect(flat({})).toEqual(['New fit', words.flatRate(''), '14500']);
    expect(flat({ class: 'heavy truck', device: 'orv-3', includedMinutes: 90 })).toEqual([
      'New fit',
      `${words.flatRate(`${words.classes['heavy truck']}, orv-3`)}; ${words.included('1 h 30 min')}`,
      '14500',
    ]);
    expect(flatFor(undefined, {}, 1)[0]).toBe('Job');
  });

  test('the tier of the highest count that is reached, in whatever order tiers are written', () => {
    const tiers = [
      { fromQuantity: 5, priceMinorUnits: 12_000 },
      { fromQuantity: 10, priceMinorUnits: 11_000 },
      { fromQuantity: 3, priceMinorUnits: 13_000 },
    ];
    const at = (order: number) => flat({ tiers }, order).slice(1);
    expect(at(2)).toEqual([words.flatRate(''), '14500']);
    expect(at(3)).toEqual([`${words.flatRate('')}; ${words.fromVehicle(3)}`, '13000']);
    expect(at(9)).toEqual([`${words.flatRate('')}; ${words.fromVehicle(5)}`, '12000']);
    expect(at(10)).toEqual([`${words.flatRate('')}; ${words.fromVehicle(10)}`, '11000']);
  });
});
