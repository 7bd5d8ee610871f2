import { visitKinds } from '../records/job.ts';
import { clockOf, clockOrNothing, whole } from './answers.ts';
import { askPayer } from './ask-payer.ts';
import { isWorked } from './kinds-of-visit.ts';
import type { Question } from './question.ts';
import { textQuestion } from './text-question.ts';

const another = 'a new payer';

/** Who pays, whose vehicle, where, which kind of visit, when the work began and how long was waited. */
export const visitQuestions: readonly Question[] = [
  {
    id: 'payer',
    applies: () => true,
    ask: async (job, ask, around) => {
      const known = around.payers().map(({ id, name }) => ({ value: id, name }));
      const chosen = await ask.choose('Who pays?', [...known, another], known[0]?.value ?? another);
      if (chosen !== another) return { ...job, identity: { ...job.identity, payer: chosen } };
      const payer = await askPayer(
        ask,
        known.map((each) => each.value),
        null,
        around.book,
      );
      around.keepPayer(payer);
      return { ...job, identity: { ...job.identity, payer: payer.id } };
    },
  },
  {
    id: 'visit',
    applies: () => true,
    ask: async (job, ask) => ({
      ...job,
      identity: {
        ...job.identity,
        visit: await ask.choose('What is done?', visitKinds, 'new fit'),
      },
    }),
  },
  {
    id: 'customer',
    applies: () => true,
    ask: async (job, ask) => {
      const name = await ask.text('Whose vehicle is it?', '');
      if (name === '') return job;
      const contact = await ask.text('Who speaks for them?', '');
      return {
        ...job,
        identity: { ...job.identity, customer: { name, ...(contact === '' ? {} : { contact }) } },
      };
    },
  },
  textQuestion('place', 'Where?', (job, place) => ({ ...job, identity: { ...job.identity, place } })),
  textQuestion('purchase-order', 'Purchase order', (job, purchaseOrder) => ({
    ...job,
    identity: { ...job.identity, purchaseOrder },
  })),
  textQuestion('installer', 'Installer', (job, installer) => ({ ...job, identity: { ...job.identity, installer } }), {
    usual: (_, around) => around.book.business.installer,
  }),
  {
    id: 'trip',
    applies: () => true,
    ask: async (job, ask) =>
      (await ask.confirm('Part of this day’s trip, whose travel is shared?', true)) ? { ...job, trip: job.day } : job,
  },
  textQuestion(
    'wasted-because',
    'Why could nothing be done?',
    (job, wastedBecause) => ({ ...job, identity: { ...job.identity, wastedBecause } }),
    { applies: (job) => !isWorked(job) },
  ),
  {
    id: 'began',
    applies: () => true,
    ask: async (job, ask, around) => {
      const waitingMinutes = Number(await ask.text('Minutes waited before the work could begin', '0', whole));
      const waitingBecause = waitingMinutes === 0 ? '' : await ask.text('Waited for', '');
      const start = await ask.text('Work began at', around.clock, clockOrNothing);
      return {
        ...job,
        labour: {
          breakMinutes: 0,
          hourlyExtras: [],
          extras: [],
          ...job.labour,
          waitingMinutes,
          ...(waitingBecause === '' ? {} : { waitingBecause }),
          ...(start === '' ? {} : { start: `${job.day}T${clockOf(start)}` }),
        },
      };
    },
  },
];
