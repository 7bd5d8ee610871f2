import { owedByAge } from '../operations/owed-by-age.ts';
import { ageBuckets, type PayerBalance } from '../pricing/aged-balances.ts';
import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { writeMoney } from '../quantities/write-money.ts';
import { openBook } from '../storage/open-book.ts';
import type { Command } from './command.ts';
import { writeTable } from './write-table.ts';

function writeBalances(balances: readonly PayerBalance[], day: string, locale: string): string {
  const shown = balances.filter((each) => each.open.length > 0 || each.creditMinorUnits !== 0);
  if (shown.length === 0) return `Nobody owes anything on ${day}.`;
  const heads = ['payer', ...ageBuckets, 'credit', 'total'];
  const payers = shown.map((each) => {
    const money = (minorUnits: number) => writeMoney(minorUnits, each.currency, locale);
    return [
      each.payerName,
      ...ageBuckets.map((bucket) => money(each.buckets[bucket])),
      money(each.creditMinorUnits === 0 ? 0 : -each.creditMinorUnits),
      money(each.totalMinorUnits),
    ];
  });
  const open = shown.flatMap((each) =>
    each.open.map((document) => {
      const money = (minorUnits: number) => writeMoney(minorUnits, each.currency, locale);
      const late = document.daysOverdue > 0 ? `${document.daysOverdue} days overdue` : '';
      return [document.number, each.payerName, `due ${document.due}`, money(document.balanceMinorUnits), late];
    }),
  );
  return [
    `Owed on ${day}, by days after the due date`,
    writeTable([heads, ...payers]),
    ...(open.length === 0 ? [] : [writeTable([['invoice', 'payer', 'due', 'open', ''], ...open])]),
  ].join('\n\n');
}

/** `keyout owed`: who owes what, by age, as of any day. */
export const owed: Command = {
  options: {
    day: { type: 'string', takes: 'DATE', help: 'as of this day (default: today)' },
    payer: { type: 'string', takes: 'ID', help: 'only this payer' },
  },
  run: async (call, world) => {
    const book = openBook(world.bookFolder);
    const given = call.options.day;
    const day = typeof given === 'string' ? given : world.today(book.book.timeZone);
    if (!isCalendarDate(day))
      throw new Problem(`"${day}" is not a date that exists.`, 'keyout owed --day', 'Write it like 2026-11-24.', 2);
    const balances = owedByAge(book, day, typeof call.options.payer === 'string' ? call.options.payer : null);
    world.say(world.json ? JSON.stringify({ day, balances }, null, 2) : writeBalances(balances, day, book.book.locale));
    return 0;
  },
};
