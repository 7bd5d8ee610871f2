import { defineRule } from '../define-rule.ts';

const words = {
  summary: () => 'The sheet is signed, or the record says why not.',
  why: 'An unsigned sheet proves little when a fault is found later.',
  says: {
    void: () => ({
      what: 'The record was changed after it was signed: the signature is void.',
      whatToDo: 'Show the sheet again and have it signed anew.',
    }),
    'nobody signed': () => ({
      what: 'Nobody has signed and no reason is recorded.',
      whatToDo: 'Have the sheet signed, or record why nobody could sign.',
    }),
  },
};

/** The sheet is signed, or the record says why not. */
export const signatureOrReason = defineRule({
  id: 'signature-or-reason',
  group: 'record',
  severity: 'advise',
  source: 'common practice, no source',
  words,
  check: ({ job, signatureVoid }) => {
    if (signatureVoid === true) return [{ at: 'signature', says: 'void' }];
    const { signature } = job;
    const missing =
      signature === undefined ||
      ((signature.answer === 'not available' || signature.answer === 'refuses') &&
        signature.noSignatureBecause === undefined &&
        signature.remark === undefined);
    return missing ? [{ at: 'signature', says: 'nobody signed' }] : [];
  },
  examples: [
    {
      name: 'signed, and changed after it',
      change: (job) => ({ ...job, signature: { answer: 'accepts', name: 'A. Quill' } }),
      facts: { signatureVoid: true },
      finds: [
        {
          at: 'signature',
          severity: 'advise',
          what: 'The record was changed after it was signed: the signature is void.',
          whatToDo: 'Show the sheet again and have it signed anew.',
        },
      ],
    },
    { name: 'accepted', change: (job) => ({ ...job, signature: { answer: 'accepts', name: 'A. Quill' } }), finds: [] },
    {
      name: 'no word on it',
      change: ({ signature: _signature, ...job }) => job,
      finds: [
        {
          at: 'signature',
          severity: 'advise',
          what: 'Nobody has signed and no reason is recorded.',
          whatToDo: 'Have the sheet signed, or record why nobody could sign.',
        },
      ],
    },
  ],
});
