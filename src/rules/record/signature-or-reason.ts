import type { Rule, RuleHit } from '../rule.ts';

/** The sheet is signed, or the record says why not. */
export const signatureOrReason: Rule = {
  id: 'signature-or-reason',
  group: 'record',
  severity: 'advise',
  summary: 'The sheet is signed, or the record says why not.',
  why: 'An unsigned sheet proves little when a fault is found later.',
  source: 'common practice, no source',
  check: ({ job, signatureVoid }) => {
    const signature = job.signature;
    const missing =
      signature === undefined ||
      ((signature.answer === 'not available' || signature.answer === 'refuses') &&
        signature.noSignatureBecause === undefined &&
        signature.remark === undefined);
    if (signatureVoid === true)
      return [
        {
          at: 'signature',
          what: 'The record was changed after it was signed: the signature is void.',
          whatToDo: 'Show the sheet again and have it signed anew.',
        } satisfies RuleHit,
      ];
    return missing
      ? [
          {
            at: 'signature',
            what: 'Nobody has signed and no reason is recorded.',
            whatToDo: 'Have the sheet signed, or record why nobody could sign.',
          } satisfies RuleHit,
        ]
      : [];
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
};
