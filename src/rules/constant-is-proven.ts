import { provenWire } from './proven-wire.ts';
import type { Rule } from './rule.ts';

/** The wire on the supply lead is proven to be constant (30). */
export const constantIsProven: Rule = {
  id: 'constant-is-proven',
  group: 'wiring',
  severity: 'block',
  summary: 'The wire on the supply lead is proven to be constant (30).',
  why: 'A supply that goes off with the key leaves the device dead when the vehicle stands, and a wrong wire feeds back into the vehicle.',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  check: ({ job, evidence }) => provenWire(job, evidence, 'supply', ['constant']),
  examples: [
    { name: 'proven by its readings', change: (job) => job, finds: [] },
    {
      name: 'not read at all',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) => (point.name === 'P1' ? { ...point, readings: [] } : point)),
      }),
      finds: ['supply'],
    },
  ],
};
