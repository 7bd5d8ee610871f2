import { provenWire } from './proven-wire.ts';
import type { Rule } from './rule.ts';

/** The wire on the ground lead is proven to be ground (31). */
export const groundIsProven: Rule = {
  id: 'ground-is-proven',
  group: 'wiring',
  severity: 'block',
  summary: 'The wire on the ground lead is proven to be ground (31).',
  why: 'Without a ground of its own the device finds a way back through its other leads: it lives, but reports nonsense.',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  check: ({ job, evidence }) => provenWire(job, evidence, 'ground', ['ground']),
  examples: [
    { name: 'proven by its readings', change: (job) => job, finds: [] },
    {
      name: 'not read at all',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) => (point.name === 'G1' ? { ...point, readings: [] } : point)),
      }),
      finds: ['ground'],
    },
  ],
};
