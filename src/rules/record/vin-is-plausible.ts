import { type VinFault, vinFault } from '../../electrics/vin-fault.ts';
import type { JobInput } from '../../records/job.ts';
import type { Rule, RuleHit } from '../rule.ts';

const withVin = (vin: string) => (job: JobInput) => ({ ...job, vehicle: { ...job.vehicle, vin } });

const looksLike: Readonly<Record<string, string>> = { I: '1', O: '0', Q: '0' };

function hitOf(vin: string, fault: VinFault): RuleHit {
  if (fault.kind === 'length')
    return {
      at: 'vehicle',
      what: `The VIN ${vin} has ${fault.length} letters and digits; a VIN has 17.`,
      whatToDo:
        'Read it again from the plate. Plant, trailers and vehicles from before 1981 may carry a shorter number.',
    };
  if (fault.kind === 'sign') {
    const meant = looksLike[fault.sign];
    return {
      at: 'vehicle',
      what: `The VIN ${vin} has "${fault.sign}" in position ${fault.position}; no VIN holds I, O, Q or anything but letters and digits.`,
      whatToDo:
        meant === undefined ? 'Read it again from the plate.' : `Read it again from the plate: it may be a ${meant}.`,
    };
  }
  return {
    at: 'vehicle',
    what: `The check digit of VIN ${vin} should be ${fault.expected}, it reads ${fault.found}.`,
    whatToDo: fault.required
      ? 'Read it again from the plate.'
      : 'Outside North America the digit is not required: compare once more.',
    ...(fault.required ? { severity: 'reason' as const } : {}),
  };
}

/** The VIN has its 17 signs and, in North America, its check digit. */
export const vinIsPlausible: Rule = {
  id: 'vin-is-plausible',
  group: 'record',
  severity: 'advise',
  summary: 'The VIN has its 17 signs and, in North America, its check digit.',
  why: 'A wrong VIN files the sheet with the wrong vehicle.',
  source: '49 CFR 565.15 (North America); ISO 3779 elsewhere, which asks for no check digit',
  check: ({ job }) => {
    const vin = job.vehicle.vin;
    const fault = vin === undefined ? null : vinFault(vin);
    return vin === undefined || fault === null ? [] : [hitOf(vin, fault)];
  },
  examples: [
    { name: 'the sample of 49 CFR 565.15', change: withVin('1G4AH59H45G118341'), finds: [] },
    {
      name: 'that sample with one digit changed',
      change: withVin('1G4AH59H45G118331'),
      finds: [
        {
          at: 'vehicle',
          severity: 'reason',
          what: 'The check digit of VIN 1G4AH59H45G118331 should be 1, it reads 4.',
          whatToDo: 'Read it again from the plate.',
        },
      ],
    },
    {
      name: 'a European VIN without a check digit (advice only)',
      change: withVin('WBAEV53443KM18682'),
      finds: [
        {
          at: 'vehicle',
          severity: 'advise',
          what: 'The check digit of VIN WBAEV53443KM18682 should be 2, it reads 4.',
          whatToDo: 'Outside North America the digit is not required: compare once more.',
        },
      ],
    },
    {
      name: 'the letter O for a nought',
      change: withVin('1G4AH59H45G11834O'),
      finds: [
        {
          at: 'vehicle',
          severity: 'advise',
          what: 'The VIN 1G4AH59H45G11834O has "O" in position 17; no VIN holds I, O, Q or anything but letters and digits.',
          whatToDo: 'Read it again from the plate: it may be a 0.',
        },
      ],
    },
    {
      name: 'sixteen signs',
      change: withVin('1G4AH59H45G11834'),
      finds: [
        {
          at: 'vehicle',
          severity: 'advise',
          what: 'The VIN 1G4AH59H45G11834 has 16 letters and digits; a VIN has 17.',
          whatToDo:
            'Read it again from the plate. Plant, trailers and vehicles from before 1981 may carry a shorter number.',
        },
      ],
    },
  ],
};
