import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { openBook } from '../storage/open-book.ts';
import { askLine } from './ask-in-words.ts';
import type { Call, Command, World } from './command.ts';

const words = { from: 'first', to: 'last' } as const;
const dayProblem = (text: string) =>
  isCalendarDate(text) ? null : `"${text}" is not a date that exists; write it like 2026-11-30.`;

async function dayOf(call: Call, world: World, name: 'from' | 'to'): Promise<string> {
  const given = call.options[name];
  if (typeof given !== 'string') {
    if (world.mayAsk) return askLine(world, `The ${words[name]} day of the period (2026-11-30)`, dayProblem);
    throw new Problem(
      `The ${words[name]} day of the period is missing.`,
      `keyout export --${name}`,
      'Write the period like --from 2026-11-01 --to 2026-11-30.',
      2,
    );
  }
  if (!isCalendarDate(given))
    throw new Problem(
      `"${given}" is not a date that exists.`,
      `keyout export --${name}`,
      'Write it like 2026-11-30.',
      2,
    );
  return given;
}

async function periodOf(call: Call, world: World): Promise<{ readonly from: string; readonly to: string }> {
  const period = { from: await dayOf(call, world, 'from'), to: await dayOf(call, world, 'to') };
  if (period.from > period.to)
    throw new Problem('The period ends before it begins.', 'keyout export', 'Write the earlier day after --from.', 2);
  return period;
}

/** `keyout export`: the bookkeeper's files for a period, in one folder, the same bytes each time. */
export const exportCommand: Command = {
  options: {
    from: { type: 'string', takes: 'DATE', help: 'first day of the period' },
    to: { type: 'string', takes: 'DATE', help: 'last day of the period' },
    out: { type: 'string', takes: 'DIR', help: 'folder to make (default: out/export-FROM-TO in the book)' },
    'decimal-comma': { type: 'boolean', help: 'decimal commas, fields parted by semicolons' },
    'no-bom': { type: 'boolean', help: 'no byte-order mark at the beginning of the files' },
  },
  run: async (call, world) => {
    const period = await periodOf(call, world);
    const book = openBook(world.bookFolder);
    const { exportPeriod } = await import('../operations/export-period.ts');
    const exported = exportPeriod(book, period, {
      folder: typeof call.options.out === 'string' ? call.options.out : null,
      decimalComma: call.options['decimal-comma'] === true,
      byteOrderMark: call.options['no-bom'] !== true,
    });
    const { folder, files: names } = exported;
    const structured = names.filter((name) => name.startsWith('structured/')).length;
    world.say(
      world.json
        ? JSON.stringify(exported, null, 2)
        : `${names.length - structured} files and ${structured} structured documents in ${folder}\nBegin with control-totals.csv; columns.csv says what each column means.`,
    );
    return 0;
  },
};
