import { hasLuhnDigit } from '../../electrics/luhn.ts';
import { defineRule } from '../define-rule.ts';

/** 3GPP TS 23.003 annex B. */
export const imeiDigits = 15;

const words = {
  summary: () => `The IMEI has ${imeiDigits} digits and its check digit.`,
  why: 'A device with a wrong number is never found again.',
  says: {
    'not right': (device: { imei: string; digits: number }) => ({
      what: `The IMEI ${device.imei} is not ${device.digits} digits with the right last digit.`,
      whatToDo: 'Read it again from the label.',
    }),
  },
};

/** The IMEI has 15 digits and its check digit. */
export const imeiIsPlausible = defineRule({
  id: 'imei-is-plausible',
  group: 'record',
  severity: 'reason',
  source: '3GPP TS 23.003 annex B; ISO/IEC 7812-1 annex B',
  words,
  check: ({ job }) => {
    const imei = job.device?.imei;
    const digits = imei?.replace(/\D/g, '') ?? '';
    if (imei === undefined || (digits.length === imeiDigits && hasLuhnDigit(digits))) return [];
    return [{ at: 'device', says: 'not right', figures: { imei, digits: imeiDigits } }];
  },
  examples: [
    {
      name: 'the often printed example 49-015420-323751-8 (from memory)',
      change: (job) => ({ ...job, device: { profile: 'example-device', imei: '490154203237518' } }),
      finds: [],
    },
    {
      name: 'its last digit changed',
      change: (job) => ({ ...job, device: { profile: 'example-device', imei: '490154203237517' } }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The IMEI 490154203237517 is not 15 digits with the right last digit.',
          whatToDo: 'Read it again from the label.',
        },
      ],
    },
  ],
});
