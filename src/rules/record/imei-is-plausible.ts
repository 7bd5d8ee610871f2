import { hasLuhnDigit } from '../../electrics/luhn.ts';
import type { Rule, RuleHit } from '../rule.ts';

/** The IMEI has 15 digits and its check digit. */
export const imeiIsPlausible: Rule = {
  id: 'imei-is-plausible',
  group: 'record',
  severity: 'reason',
  summary: 'The IMEI has 15 digits and its check digit.',
  why: 'A device with a wrong number is never found again.',
  source: '3GPP TS 23.003 annex B; ISO/IEC 7812-1 annex B',
  check: ({ job }) => {
    const imei = job.device?.imei?.replace(/\D/g, '');
    return imei === undefined || (imei.length === 15 && hasLuhnDigit(imei))
      ? []
      : [
          {
            at: 'device',
            what: `The IMEI ${job.device?.imei} is not 15 digits with the right last digit.`,
            whatToDo: 'Read it again from the label.',
          } satisfies RuleHit,
        ];
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
};
