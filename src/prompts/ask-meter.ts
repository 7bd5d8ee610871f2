import type { MeterProfile } from '../records/book.ts';
import { numberOf, numberOrNothing, something } from './answers.ts';
import { shortName } from './ask-payer.ts';
import type { Ask } from './question.ts';

const given = (text: string) => something(text) ?? numberOrNothing(text);

/**
 * What a meter can tell, as printed in its manual: accuracy as percent of reading plus digits, and the last digit of its direct-voltage ranges.
 * @param ask how a prompt reaches a person
 * @param taken short names in use
 * @param current the meter as it is, or null for a new one
 */
export async function askMeter(
  ask: Ask,
  taken: readonly string[],
  current: MeterProfile | null,
): Promise<MeterProfile> {
  const name = await ask.text('Name of the meter', current?.name ?? '', something);
  const percent = await ask.text(
    'Accuracy on direct volts: ± percent of reading',
    String(current?.accuracyPercent ?? '0.5'),
    given,
  );
  const digits = await ask.text('plus digits', String(current?.accuracyDigits ?? '2'), given);
  const ranges = await ask.text(
    'Ranges as "up to volts / last digit in volts" (commas)',
    current?.ranges.map((range) => `${range.toVolts}/${range.digitVolts}`).join(', ') ?? '6/0.001, 60/0.01',
    (text) =>
      text.split(/,\s*/).every((each) => /^\d+(\.\d+)?\s*\/\s*0?\.\d+$|^\d+(\.\d+)?\s*\/\s*1$/.test(each.trim()))
        ? null
        : 'Type it as: 6/0.001, 60/0.01.',
  );
  return {
    inputMegohms: 10,
    ...current,
    id: current?.id ?? shortName(name, taken),
    name,
    accuracyPercent: numberOf(percent),
    accuracyDigits: Math.round(numberOf(digits)),
    ranges: ranges.split(/,\s*/).map((each) => {
      const [toVolts = '', digitVolts = ''] = each.split('/');
      return { toVolts: Number(toVolts), digitVolts: Number(digitVolts) };
    }),
  };
}
