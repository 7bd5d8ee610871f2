import { provenWire } from './proven-wire.ts';
import type { Rule } from './rule.ts';

/** The wire on the ignition lead is proven to be ignition (15). */
export const ignitionIsProven: Rule = {
  id: 'ignition-is-proven',
  group: 'wiring',
  severity: 'block',
  summary: 'The wire on the ignition lead is proven to be ignition (15).',
  why: 'On the wrong wire the device misses journeys, or never sleeps and drains the battery.',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  check: ({ job, evidence }) => provenWire(job, evidence, 'ignition', ['ignition']),
  examples: [
    { name: 'proven by its readings', change: (job) => job, finds: [] },
    {
      name: 'not read at all',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) => (point.name === 'P2' ? { ...point, readings: [] } : point)),
      }),
      finds: ['ignition'],
    },
  ],
};
