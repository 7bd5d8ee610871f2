import { defineRule } from '../define-rule.ts';
import { soundPayer } from '../sound-job.ts';

const words = {
  summary: () => 'The purchase order is recorded where the payer needs one.',
  why: 'An invoice without its order number is sent back.',
  says: {
    'none recorded': (payer: { name: string }) => ({
      what: `${payer.name} pays only against a purchase order, and none is recorded.`,
      whatToDo: 'Ask for the number and record it.',
    }),
  },
};

/** The purchase order is recorded where the payer needs one. */
export const purchaseOrderWhereThePayerNeedsOne = defineRule({
  id: 'purchase-order-where-the-payer-needs-one',
  group: 'record',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job, payer }) =>
    payer?.needsPurchaseOrder === true && job.identity.purchaseOrder === undefined
      ? [{ at: 'purchase order', says: 'none recorded', figures: { name: payer.name } }]
      : [],
  examples: [
    {
      name: 'an order number',
      change: (job) => ({ ...job, identity: { ...job.identity, purchaseOrder: 'PO-1' } }),
      facts: { payer: soundPayer },
      finds: [],
    },
    {
      name: 'none',
      change: ({ identity, ...job }) => ({ ...job, identity: { payer: identity?.payer, visit: identity?.visit } }),
      facts: { payer: soundPayer },
      finds: [
        {
          at: 'purchase order',
          severity: 'block',
          what: 'Example payer pays only against a purchase order, and none is recorded.',
          whatToDo: 'Ask for the number and record it.',
        },
      ],
    },
  ],
});
