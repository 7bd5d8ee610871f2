import { vinCheckDigit } from '../electrics/vin.ts';
import type { Rule, RuleHit } from './rule.ts';

/** The VIN has its 17 signs and, in North America, its check digit. */
export const vinIsPlausible: Rule = {
  id: 'vin-is-plausible',
  group: 'record',
  severity: 'advise',
  summary: 'The VIN has its 17 signs and, in North America, its check digit.',
  why: 'A wrong VIN files the sheet with the wrong vehicle.',
  source: '49 CFR 565.15 (North America); ISO 3779 elsewhere',
  check: ({ job }) => {
    const vin = job.vehicle.vin;
    if (vin === undefined) return [];
    const digit = vinCheckDigit(vin);
    if (digit === null)
      return [
        {
          at: 'vehicle',
          what: `The VIN ${vin} has not 17 letters and digits without I, O and Q.`,
          whatToDo: 'Read it again from the plate.',
        },
      ];
    if (digit === vin[8]) return [];
    const american = /^[1-5]/.test(vin);
    const hit: RuleHit = {
      at: 'vehicle',
      what: `The check digit of VIN ${vin} should be ${digit}, it reads ${vin[8]}.`,
      whatToDo: american
        ? 'Read it again from the plate.'
        : 'Outside North America the digit is not required: compare once more.',
    };
    return [american ? { ...hit, severity: 'reason' } : hit];
  },
  examples: [
    {
      name: 'the sample of 49 CFR 565.15',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, vin: '1G4AH59H45G118341' } }),
      finds: [],
    },
    {
      name: 'that sample with one digit changed',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, vin: '1G4AH59H45G118331' } }),
      finds: ['vehicle'],
    },
  ],
};
