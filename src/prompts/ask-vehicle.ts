import { vehicleClasses } from '../records/vehicle.ts';
import { numberOf, numberOrNothing, wholeOrNothing } from './answers.ts';
import { isWorked } from './kinds-of-visit.ts';
import type { Question } from './question.ts';
import { textQuestion } from './text-question.ts';

const odometerForm = /^(\d{1,3}(?:[ ,.]?\d{3})*|\d+)\s*(mi|km|h)?$/i;

/** Which vehicle. */
export const vehicleQuestions: readonly Question[] = [
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
        class: await ask.choose('Class', vehicleClasses, 'van'),
      },
    }),
  },
  textQuestion(
    'odometer',
    (around, job) =>
      `Odometer (${job.vehicle.class === 'plant' ? 'h' : around.book.units.distance}, or write mi, km or h after it)`,
    (job, text, around) => {
      const match = odometerForm.exec(text);
      const usual = job.vehicle.class === 'plant' ? 'h' : around.book.units.distance;
      const unit = (match?.[2]?.toLowerCase() ?? usual) as 'mi' | 'km' | 'h';
      return {
        ...job,
        vehicle: { ...job.vehicle, odometer: { value: Number((match?.[1] ?? '').replace(/[ ,.]/g, '')), unit } },
      };
    },
    {
      applies: isWorked,
      check: (text) =>
        text === '' || odometerForm.test(text) ? null : 'Type what it shows, such as 48211 or 48211 km.',
    },
  ),
  {
    id: 'system',
    applies: isWorked,
    ask: async (job, ask) => ({
      ...job,
      vehicle: {
        ...job.vehicle,
        systemVolts:
          (await ask.choose('System volts', ['12', '24'], job.vehicle.class === 'heavy truck' ? '24' : '12')) === '24'
            ? 24
            : 12,
      },
    }),
  },
  {
    id: 'drive',
    applies: isWorked,
    ask: async (job, ask, around) => {
      const drive = await ask.choose('Drive', ['combustion', 'hybrid', 'electric'], 'combustion');
      if ((drive as string) !== 'combustion') {
        around.tell(
          '  Caution: orange cable is high voltage. Never probe, cut or tap it; the maker’s instructions and licensed practice come first.',
        );
      }
      return { ...job, vehicle: { ...job.vehicle, drive } };
    },
  },
  {
    id: 'start',
    applies: isWorked,
    ask: async (job, ask) => ({
      ...job,
      vehicle: {
        ...job.vehicle,
        start: await ask.choose('Started by', ['key', 'button'], 'key'),
      },
    }),
  },
  {
    id: 'isolator',
    applies: (job) => isWorked(job) && job.vehicle.class !== 'car' && job.vehicle.class !== 'van',
    ask: async (job, ask) => ({
      ...job,
      vehicle: { ...job.vehicle, batteryIsolator: await ask.confirm('Has it a battery isolator?', false) },
    }),
  },
  textQuestion(
    'battery',
    'Battery capacity in ampere hours (one battery of a 24 V pair)',
    (job, text) => ({ ...job, vehicle: { ...job.vehicle, batteryAmpereHours: numberOf(text) } }),
    { applies: isWorked, check: numberOrNothing },
  ),
  textQuestion(
    'asleep',
    'The vehicle’s own current asleep in mA, if measured',
    (job, text) => ({ ...job, vehicle: { ...job.vehicle, asleepMilliamps: numberOf(text) } }),
    { applies: isWorked, check: numberOrNothing },
  ),
  textQuestion(
    'standing',
    'Days it may stand between drives',
    (job, text) => ({ ...job, vehicle: { ...job.vehicle, standingDays: Number(text) } }),
    { applies: isWorked, check: wholeOrNothing, usual: (_, around) => String(around.book.standingDaysMin) },
  ),
];
