import type { Job } from '../records/job.ts';
import { listOf, numberOf, numberOrNothing } from './answers.ts';
import { isWorked } from './kinds-of-visit.ts';
import type { Question } from './question.ts';

/** The state of the vehicle before the work, or after it, where the usual answer is what was found before. */
export function conditionQuestion(when: 'before' | 'after'): Question {
  const found = (list: readonly string[] | undefined) =>
    list === undefined || list.length === 0 ? 'none' : list.join(', ');
  return {
    id: `condition-${when}`,
    applies: isWorked,
    ask: async (job, ask, around) => {
      const before = when === 'after' ? job.before : undefined;
      const lamps = await ask.text(`Warning lamps ${when} the work (commas)`, found(before?.warningLamps));
      const functions = await ask.text(`What does not work ${when} it (commas)`, found(before?.functionsNotWorking));
      const rest = await ask.text(`Volts at the battery at rest, ${when}`, '', numberOrNothing);
      if (when === 'before') around.tell('  Caution: wheels chocked, park brake on; run the engine only in the open.');
      const charging = await ask.text(`Volts at the battery with the engine running, ${when}`, '', numberOrNothing);
      const condition: Job['before'] = {
        warningLamps: listOf(lamps),
        functionsNotWorking: listOf(functions),
        ...(rest === '' ? {} : { restVolts: numberOf(rest) }),
        ...(charging === '' ? {} : { chargingVolts: numberOf(charging) }),
      };
      return { ...job, [when]: condition };
    },
  };
}
