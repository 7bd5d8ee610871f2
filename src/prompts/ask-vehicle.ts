import { visitKinds } from '../records/job.ts';
import { vehicleClasses } from '../records/vehicle.ts';
import type { Question } from './question.ts';
import { isWorked, listOf, textQuestion } from './text-question.ts';

const whole = (text: string) => (/^\d+$/.test(text) || text === '' ? null : 'Type a whole number.');
const number = (text: string) => (/^\d+(\.\d+)?$/.test(text) || text === '' ? null : 'Type a number such as 12.6.');

/** Who, where, which vehicle, and how it was found. */
export const vehicleQuestions: readonly Question[] = [
  {
    id: 'payer',
    applies: () => true,
    ask: async (job, ask, around) => ({
      ...job,
      identity: { ...job.identity, payer: await ask.choose('Who pays?', around.payers, around.payers[0] ?? '') },
    }),
  },
  {
    id: 'visit',
    applies: () => true,
    ask: async (job, ask) => ({
      ...job,
      identity: {
        ...job.identity,
        visit: (await ask.choose('What is done?', visitKinds, 'new fit')) as (typeof visitKinds)[number],
      },
    }),
  },
  textQuestion('customer', 'Whose vehicle is it?', (job, name) => ({
    ...job,
    identity: { ...job.identity, customer: { name } },
  })),
  textQuestion('place', 'Where?', (job, place) => ({ ...job, identity: { ...job.identity, place } })),
  textQuestion('purchase-order', 'Purchase order', (job, purchaseOrder) => ({
    ...job,
    identity: { ...job.identity, purchaseOrder },
  })),
  textQuestion('installer', 'Installer', (job, installer) => ({ ...job, identity: { ...job.identity, installer } }), {
    usual: (_, installer) => installer,
  }),
  textQuestion(
    'wasted-because',
    'Why could nothing be done?',
    (job, wastedBecause) => ({ ...job, identity: { ...job.identity, wastedBecause } }),
    { applies: (job) => !isWorked(job) },
  ),
  textQuestion('maker', 'Maker', (job, maker) => ({ ...job, vehicle: { ...job.vehicle, maker } })),
  textQuestion('model', 'Model', (job, model) => ({ ...job, vehicle: { ...job.vehicle, model } })),
  textQuestion('year', 'Year', (job, year) => ({ ...job, vehicle: { ...job.vehicle, year: Number(year) } }), {
    check: (text) => (/^(19[5-9]\d|20\d\d)?$/.test(text) ? null : 'Type a year such as 2024.'),
  }),
  textQuestion('plate', 'Plate', (job, plate) => ({ ...job, vehicle: { ...job.vehicle, plate } })),
  textQuestion('unit-number', 'Unit number', (job, unitNumber) => ({
    ...job,
    vehicle: { ...job.vehicle, unitNumber },
  })),
  textQuestion('vin', 'VIN', (job, vin) => ({ ...job, vehicle: { ...job.vehicle, vin: vin.toUpperCase() } }), {
    check: (text) => (/^[A-Za-z0-9-]{0,24}$/.test(text) ? null : 'Type letters and digits only.'),
  }),
  {
    id: 'class',
    applies: () => true,
    ask: async (job, ask) => ({
      ...job,
      vehicle: {
        ...job.vehicle,
        class: (await ask.choose('Class', vehicleClasses, 'van')) as (typeof vehicleClasses)[number],
      },
    }),
  },
  textQuestion(
    'odometer',
    'Odometer',
    (job, value) => ({
      ...job,
      vehicle: { ...job.vehicle, odometer: { value: Number(value), unit: job.vehicle.class === 'plant' ? 'h' : 'mi' } },
    }),
    { applies: isWorked, check: whole },
  ),
  {
    id: 'system',
    applies: isWorked,
    ask: async (job, ask) => ({
      ...job,
      vehicle: { ...job.vehicle, systemVolts: (await ask.choose('System', ['12', '24'], '12')) === '24' ? 24 : 12 },
    }),
  },
  {
    id: 'drive',
    applies: isWorked,
    ask: async (job, ask) => ({
      ...job,
      vehicle: {
        ...job.vehicle,
        drive: (await ask.choose('Drive', ['combustion', 'hybrid', 'electric'], 'combustion')) as
          | 'combustion'
          | 'hybrid'
          | 'electric',
      },
    }),
  },
  {
    id: 'start',
    applies: isWorked,
    ask: async (job, ask) => ({
      ...job,
      vehicle: {
        ...job.vehicle,
        start: (await ask.choose('Started by', ['key', 'button'], 'key')) as 'key' | 'button',
      },
    }),
  },
  textQuestion(
    'battery',
    'Battery capacity in ampere hours',
    (job, text) => ({ ...job, vehicle: { ...job.vehicle, batteryAmpereHours: Number(text) } }),
    { applies: isWorked, check: number },
  ),
  textQuestion(
    'asleep',
    'The vehicle’s own current asleep in mA, if measured',
    (job, text) => ({ ...job, vehicle: { ...job.vehicle, asleepMilliamps: Number(text) } }),
    { applies: isWorked, check: number },
  ),
  textQuestion(
    'standing',
    'Days it may stand between drives',
    (job, text) => ({ ...job, vehicle: { ...job.vehicle, standingDays: Number(text) } }),
    { applies: isWorked, check: whole },
  ),
  ...(['before', 'after'] as const).flatMap((when): readonly Question[] => [
    textQuestion(
      `lamps-${when}`,
      `Warning lamps ${when} (commas; "none")`,
      (job, text) => ({ ...job, [when]: { functionsNotWorking: [], ...job[when], warningLamps: listOf(text) } }),
      {
        applies: isWorked,
        usual: (job) => (when === 'after' ? job.before?.warningLamps.join(', ') || 'none' : 'none'),
      },
    ),
    textQuestion(
      `functions-${when}`,
      `Functions that do not work ${when} (commas; "none")`,
      (job, text) => ({ ...job, [when]: { warningLamps: [], ...job[when], functionsNotWorking: listOf(text) } }),
      {
        applies: isWorked,
        usual: (job) => (when === 'after' ? job.before?.functionsNotWorking.join(', ') || 'none' : 'none'),
      },
    ),
    textQuestion(
      `rest-${when}`,
      `Volts at the battery at rest ${when}`,
      (job, text) => ({
        ...job,
        [when]: { warningLamps: [], functionsNotWorking: [], ...job[when], restVolts: Number(text) },
      }),
      { applies: isWorked, check: number },
    ),
    textQuestion(
      `charging-${when}`,
      `Volts at the battery, engine running, ${when}`,
      (job, text) => ({
        ...job,
        [when]: { warningLamps: [], functionsNotWorking: [], ...job[when], chargingVolts: Number(text) },
      }),
      { applies: isWorked, check: number },
    ),
  ]),
];
