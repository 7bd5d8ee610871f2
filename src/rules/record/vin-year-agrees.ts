import { vinFault } from '../../electrics/vin-fault.ts';
import { vinModelYears } from '../../electrics/vin-model-year.ts';
import { vinOrigin } from '../../electrics/vin-region.ts';
import type { JobInput } from '../../records/job.ts';
import type { Vehicle } from '../../records/vehicle.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';

/** Largest weight of a truck whose position 7 tells the cycle of years. Source: 49 CFR 565.15(b), 10,000 lb. */
const lightKilogramsMax = 4536;

const withVehicle = (fields: JobInput['vehicle']) => (job: JobInput) => ({
  ...job,
  vehicle: { ...job.vehicle, ...fields },
});

function isLight(vehicle: Vehicle): boolean {
  if (vehicle.class === 'car') return true;
  const maybe = vehicle.class === 'van' || vehicle.class === 'light truck';
  return maybe && vehicle.grossWeightKilograms !== undefined && vehicle.grossWeightKilograms <= lightKilogramsMax;
}

const words = {
  summary: () => 'The year recorded is the model year that a North American VIN tells, or one beside it.',
  why: 'A year that does not fit means a mistyped VIN or another vehicle than the one in the yard.',
  says: {
    'no model year': (number: { vin: string; character: string }) => ({
      what: `Position 10 of VIN ${number.vin} is "${number.character}", which stands for no model year.`,
      whatToDo: 'Compare plate, papers and record, and correct the one that is wrong.',
    }),
    'another model year': (number: { vin: string; years: readonly number[]; year: number }, voice: Voice) => ({
      what: `The VIN ${number.vin} tells model year ${voice.or(number.years.map(String))}; recorded is ${number.year}.`,
      whatToDo: 'Compare plate, papers and record, and correct the one that is wrong.',
    }),
  },
};

/** The year recorded is the model year that a North American VIN tells, or one beside it. */
export const vinYearAgrees = defineRule({
  id: 'vin-year-agrees',
  group: 'record',
  severity: 'advise',
  source:
    '49 CFR 565.15(b), (d)(1) and Table VII (the characters from memory); a year beside it: model year and year of building differ (common practice, no source)',
  words,
  check: ({ job }) => {
    const { vin, year } = job.vehicle;
    if (vin === undefined || year === undefined || vinFault(vin) !== null) return [];
    if (vinOrigin(vin)?.region !== 'North America') return [];
    const years = vinModelYears(vin, isLight(job.vehicle));
    if (years.some((each) => Math.abs(each - year) <= 1)) return [];
    return years.length === 0
      ? [{ at: 'vehicle', says: 'no model year', figures: { vin, character: vin[9] ?? '' } }]
      : [{ at: 'vehicle', says: 'another model year', figures: { vin, years, year } }];
  },
  examples: [
    { name: 'a van of 2024', change: (job) => job, finds: [] },
    { name: 'recorded a year later', change: withVehicle({ year: 2025 }), finds: [] },
    {
      name: 'recorded two years later',
      change: withVehicle({ year: 2026 }),
      finds: [
        {
          at: 'vehicle',
          severity: 'advise',
          what: 'The VIN 5ZWTA3CD3R1004417 tells model year 1994 or 2024; recorded is 2026.',
          whatToDo: 'Compare plate, papers and record, and correct the one that is wrong.',
        },
      ],
    },
    {
      name: 'a car of 2005 recorded as 2035',
      change: withVehicle({ vin: '1G4AH59H45G118341', class: 'car', year: 2035 }),
      finds: [
        {
          at: 'vehicle',
          severity: 'advise',
          what: 'The VIN 1G4AH59H45G118341 tells model year 2005; recorded is 2035.',
          whatToDo: 'Compare plate, papers and record, and correct the one that is wrong.',
        },
      ],
    },
    {
      name: 'a European VIN, which need not tell it',
      change: withVehicle({ vin: 'WDBEA30D3HA391172', year: 1995 }),
      finds: [],
    },
    {
      name: 'a character that stands for no model year',
      change: withVehicle({ vin: '5ZWTA3CD3Z1004417' }),
      finds: [
        {
          at: 'vehicle',
          severity: 'advise',
          what: 'Position 10 of VIN 5ZWTA3CD3Z1004417 is "Z", which stands for no model year.',
          whatToDo: 'Compare plate, papers and record, and correct the one that is wrong.',
        },
      ],
    },
  ],
});
