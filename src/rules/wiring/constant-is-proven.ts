import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import { provenWire, provenWireWords } from '../proven-wire.ts';

const words = {
  summary: () => 'The wire on the supply lead is proven to be constant (30).',
  why: 'A supply that goes off with the key leaves the device dead when the vehicle stands, and a wrong wire feeds back into the vehicle.',
  says: provenWireWords,
};

/** The wire on the supply lead is proven to be constant (30). */
export const constantIsProven = defineRule({
  id: 'constant-is-proven',
  group: 'wiring',
  severity: 'block',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  words,
  check: ({ job, evidence }) => provenWire(job, evidence, 'supply', ['constant']),
  examples: [
    { name: 'proven by its readings', change: (job) => job, finds: [] },
    {
      name: 'not read at all',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) => (point.name === 'P1' ? { ...point, readings: [] } : point)),
      }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The supply lead is joined to P1, which is not proven: Red with white stripe (P1) is not proven; nothing that was read rules out any role.',
          whatToDo: 'Read P1 with the key on, black lead on the chassis (about 3.1 of 7 possible roles would remain).',
        },
      ],
    },
    {
      name: 'joined to no wire of the record',
      change: withConnection('supply', { point: undefined }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The supply lead names no wire that was measured.',
          whatToDo: 'Record the probe point that it is joined to, with its readings.',
        },
      ],
    },
  ],
});
