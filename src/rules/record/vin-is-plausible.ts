import { type VinFault, vinFault } from '../../electrics/vin-fault.ts';
import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Hit } from '../rule-words.ts';

const withVin = (vin: string) => (job: JobInput) => ({ ...job, vehicle: { ...job.vehicle, vin } });

const looksLike: Readonly<Record<string, string>> = { I: '1', O: '0', Q: '0' };

/** ISO 3779; 49 CFR 565.15. */
export const vinCharacters = 17;

function hitOf(vin: string, fault: VinFault): Hit<typeof words> {
  const at = 'vehicle';
  if (fault.kind === 'length') return { at, says: 'length', figures: { vin, length: fault.length } };
  if (fault.kind === 'character') {
    const { character, position } = fault;
    return { at, says: 'character', figures: { vin, character, position, meant: looksLike[character] ?? null } };
  }
  const figures = { vin, expected: fault.expected, found: fault.found };
  return fault.required
    ? { at, says: 'check digit', figures, severity: 'reason' }
    : { at, says: 'check digit, not required', figures };
}

const words = {
  summary: () => `The VIN has its ${vinCharacters} characters and, in North America, its check digit.`,
  why: 'A wrong VIN files the sheet with the wrong vehicle.',
  says: {
    length: (number: { vin: string; length: number }) => ({
      what: `The VIN ${number.vin} has ${number.length} letters and digits; a VIN has ${vinCharacters}.`,
      whatToDo:
        'Read it again from the plate. Plant, trailers and vehicles from before 1981 may carry a shorter number.',
    }),
    character: (number: { vin: string; character: string; position: number; meant: string | null }) => ({
      what: `The VIN ${number.vin} has "${number.character}" in position ${number.position}; no VIN holds I, O, Q or anything but letters and digits.`,
      whatToDo:
        number.meant === null
          ? 'Read it again from the plate.'
          : `Read it again from the plate: it may be a ${number.meant}.`,
    }),
    'check digit': (number: { vin: string; expected: string; found: string }) => ({
      what: `The check digit of VIN ${number.vin} should be ${number.expected}, it reads ${number.found}.`,
      whatToDo: 'Read it again from the plate.',
    }),
    'check digit, not required': (number: { vin: string; expected: string; found: string }) => ({
      what: `The check digit of VIN ${number.vin} should be ${number.expected}, it reads ${number.found}.`,
      whatToDo: 'Outside North America the digit is not required: compare once more.',
    }),
  },
};

/** The VIN has its 17 characters and, in North America, its check digit. */
export const vinIsPlausible = defineRule({
  id: 'vin-is-plausible',
  group: 'record',
  severity: 'advise',
  source: '49 CFR 565.15 (North America); ISO 3779 elsewhere, which asks for no check digit',
  words,
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
      name: 'sixteen characters',
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
});
