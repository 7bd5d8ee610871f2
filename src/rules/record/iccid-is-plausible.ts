import { type IccidFault, iccidFault } from '../../electrics/iccid.ts';
import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';

const withCard = (iccid: string) => (job: JobInput) => ({
  ...job,
  device: { ...job.device, profile: 'example-device', iccid },
});

const words = {
  summary: () => "The card's number (ICCID) begins with 89 and has its check digit.",
  why: 'A card with a wrong number is neither switched on nor found again.',
  says: {
    'cannot be right': (card: { iccid: string; fault: NonNullable<IccidFault> }) => ({
      what: `The card number ${card.iccid} cannot be right: ${card.fault}.`,
      whatToDo: 'Read it again from the card or its holder.',
    }),
  },
};

/** The card's number (ICCID) begins with 89 and has its check digit. */
export const iccidIsPlausible = defineRule({
  id: 'iccid-is-plausible',
  group: 'record',
  severity: 'reason',
  source:
    'ITU-T E.118 (89, 19 digits at most, Luhn digit); ISO/IEC 7812-1 annex B; 18 and 20 printed digits: common practice, no source',
  words,
  check: ({ job }) => {
    const iccid = job.device?.iccid;
    const fault = iccid === undefined ? null : iccidFault(iccid);
    if (iccid === undefined || fault === null) return [];
    return [{ at: 'device', says: 'cannot be right', figures: { iccid, fault } }];
  },
  examples: [
    { name: 'no card recorded', change: (job) => job, finds: [] },
    { name: '19 digits with their check digit', change: withCard('8949120000000000005'), finds: [] },
    {
      name: 'two digits swapped',
      change: withCard('8994120000000000005'),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The card number 8994120000000000005 cannot be right: check digit wrong.',
          whatToDo: 'Read it again from the card or its holder.',
        },
      ],
    },
    {
      name: 'a number that begins with 19',
      change: withCard('1949120000000000005'),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The card number 1949120000000000005 cannot be right: does not begin with 89.',
          whatToDo: 'Read it again from the card or its holder.',
        },
      ],
    },
  ],
});
