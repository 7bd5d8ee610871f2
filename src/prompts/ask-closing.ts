import { addDays } from '../quantities/calendar-date.ts';
import type { Job } from '../records/job.ts';
import {
  amountOf,
  amountOrNothing,
  clockOf,
  clockOrNothing,
  numberOf,
  numberOrNothing,
  something,
  whole,
} from './answers.ts';
import { isWorked } from './kinds-of-visit.ts';
import type { Question } from './question.ts';
import { textQuestion } from './text-question.ts';

type Labour = NonNullable<Job['labour']>;
const noLabour: Labour = { breakMinutes: 0, waitingMinutes: 0, hourlyExtras: [], extras: [] };

const ended: Question = {
  id: 'ended',
  applies: () => true,
  ask: async (job, ask, around) => {
    const end = await ask.text('Work ended at', around.clock, clockOrNothing);
    const breakMinutes = Number(await ask.text('Minutes of breaks in between', '0', whole));
    const start = job.labour?.start;
    // past midnight when the clock reads earlier than at the start
    const day = start !== undefined && clockOf(end) < start.slice(11) ? addDays(job.day, 1) : job.day;
    return {
      ...job,
      labour: { ...noLabour, ...job.labour, breakMinutes, ...(end === '' ? {} : { end: `${day}T${clockOf(end)}` }) },
    };
  },
};

/** "loom-kit 1 set, fuse-holder 2" against the names known; null when one is not understood. */
function counted(text: string, known: readonly string[]) {
  const parts = text
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '')
    .map((each) => /^(\S+)(?:\s+(\d+(?:\.\d+)?))?(?:\s+(each|metre|foot|set))?$/.exec(each));
  if (parts.some((match) => match === null || !known.includes(match[1] ?? ''))) return null;
  return parts.map((match) => ({
    id: match?.[1] ?? '',
    quantity: match?.[2] ?? '1',
    unit: (match?.[3] ?? 'each') as 'each' | 'metre' | 'foot' | 'set',
  }));
}

const extras: Question = {
  id: 'extras',
  applies: isWorked,
  ask: async (job, ask, around) => {
    const known = [...new Set(around.rates.extras.map((extra) => extra.id))];
    const text =
      known.length === 0
        ? ''
        : await ask.text(`Extras fitted (${known.join(', ')}; "name 2, name")`, '', (typed) =>
            counted(typed, known) === null ? `Type names of extras: ${known.join(', ')}.` : null,
          );
    const hourly: Labour['hourlyExtras'] = [];
    for (;;) {
      const more = await ask.text('Work by the hour beyond the fit: what / minutes (empty when none)', '', (typed) =>
        /^(.+\/\s*\d{1,4})?$/.test(typed) ? null : 'Type it as: what / minutes.',
      );
      if (more === '') break;
      const index = more.lastIndexOf('/');
      hourly.push({ what: more.slice(0, index).trim(), minutes: Number(more.slice(index + 1)) });
    }
    return {
      ...job,
      labour: {
        ...noLabour,
        ...job.labour,
        hourlyExtras: hourly,
        extras: (counted(text, known) ?? []).map(({ id, quantity }) => ({
          extra: id,
          quantity: Math.max(1, Math.round(Number(quantity))),
        })),
      },
    };
  },
};

const parts: Question = {
  id: 'parts',
  applies: isWorked,
  ask: async (job, ask, around) => {
    const known = [...new Set(around.rates.parts.map((part) => part.id))];
    const text =
      known.length === 0
        ? ''
        : await ask.text(`Parts used (${known.join(', ')}; "name 2, name 1 set")`, '', (typed) =>
            counted(typed, known) === null ? `Type names of parts: ${known.join(', ')}.` : null,
          );
    const used: NonNullable<Job['parts']> = (counted(text, known) ?? []).map(({ id, quantity, unit }) => ({
      what: around.rates.parts.find((part) => part.id === id)?.name ?? id,
      quantity,
      unit,
      part: id,
    }));
    const currency = around.book.currency;
    for (;;) {
      const what = await ask.text('Another part bought for this job (empty when none)', '');
      if (what === '') break;
      const quantity = await ask.text('How many?', '1', (typed) => something(typed) ?? numberOrNothing(typed));
      const cost = await ask.text(
        `What one cost you, ${currency}`,
        '',
        (typed) => something(typed) ?? amountOrNothing(currency)(typed),
      );
      used.push({
        what,
        quantity: String(numberOf(quantity)),
        unit: 'each',
        unitCostMinorUnits: amountOf(cost, currency) ?? 0,
      });
    }
    return { ...job, parts: used };
  },
};

const money: Question = {
  id: 'money',
  applies: () => true,
  ask: async (job, ask, around) => {
    const currency = around.book.currency;
    const deposit = await ask.text(
      `Money already taken for this job, ${currency} (empty for none)`,
      '',
      amountOrNothing(currency),
    );
    const discount = await ask.text('Discount agreed on the spot, % (empty for none)', '', (typed) =>
      typed === '' || (numberOrNothing(typed) === null && numberOf(typed) <= 100)
        ? null
        : 'Type a percentage up to 100.',
    );
    const because = discount === '' ? '' : await ask.text('Agreed because', '');
    return {
      ...job,
      ...(deposit === '' ? {} : { depositMinorUnits: amountOf(deposit, currency) ?? 0 }),
      ...(discount === '' ? {} : { discountPercent: String(numberOf(discount)) }),
      ...(because === '' ? {} : { discountBecause: because }),
    };
  },
};

/** Time, extras, parts, money and notes: the end of the work. */
export const closingQuestions: readonly Question[] = [
  ended,
  extras,
  parts,
  money,
  textQuestion('notes', 'Notes for the sheet', (job, notes) => ({ ...job, notes })),
];
