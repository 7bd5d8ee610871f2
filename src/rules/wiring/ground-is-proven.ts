import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import { provenWire, provenWireWords } from '../proven-wire.ts';

const words = {
  summary: () => 'The wire on the ground lead is proven to be ground (31).',
  why: 'Without a ground of its own the device finds a way back through its other leads: it lives, but reports nonsense.',
  says: provenWireWords,
};

/** The wire on the ground lead is proven to be ground (31). */
export const groundIsProven = defineRule({
  id: 'ground-is-proven',
  group: 'wiring',
  severity: 'block',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  words,
  check: ({ job, evidence }) => provenWire(job, evidence, 'ground', ['ground']),
  examples: [
    { name: 'proven by its readings', change: (job) => job, finds: [] },
    {
      name: 'not read at all',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) => (point.name === 'G1' ? { ...point, readings: [] } : point)),
      }),
      finds: [
        {
          at: 'ground',
          severity: 'block',
          what: 'The ground lead is joined to G1, which is not proven: Black (G1) is not proven; nothing that was read rules out any role.',
          whatToDo: 'Read G1 with the key on, black lead on the chassis (about 3.1 of 7 possible roles would remain).',
        },
      ],
    },
    {
      name: 'joined to no wire of the record',
      change: withConnection('ground', { point: undefined }),
      finds: [
        {
          at: 'ground',
          severity: 'block',
          what: 'The ground lead names no wire that was measured.',
          whatToDo: 'Record the probe point that it is joined to, with its readings.',
        },
      ],
    },
  ],
});
