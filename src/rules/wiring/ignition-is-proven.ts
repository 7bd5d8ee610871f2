import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import { provenWire, provenWireWords } from '../proven-wire.ts';

const words = {
  summary: () => 'The wire on the ignition lead is proven to be ignition (15).',
  why: 'On the wrong wire the device misses journeys, or never sleeps and drains the battery.',
  says: provenWireWords,
};

/** The wire on the ignition lead is proven to be ignition (15). */
export const ignitionIsProven = defineRule({
  id: 'ignition-is-proven',
  group: 'wiring',
  severity: 'block',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  words,
  check: ({ job, evidence }) => provenWire(job, evidence, 'ignition', ['ignition']),
  examples: [
    { name: 'proven by its readings', change: (job) => job, finds: [] },
    {
      name: 'not read at all',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) => (point.name === 'P2' ? { ...point, readings: [] } : point)),
      }),
      finds: [
        {
          at: 'ignition',
          severity: 'block',
          what: 'The ignition lead is joined to P2, which is not proven: Pink (P2) is not proven; nothing that was read rules out any role.',
          whatToDo: 'Read P2 with the key on, black lead on the chassis (about 3.1 of 7 possible roles would remain).',
        },
      ],
    },
    {
      name: 'joined to no wire of the record',
      change: withConnection('ignition', { point: undefined }),
      finds: [
        {
          at: 'ignition',
          severity: 'block',
          what: 'The ignition lead names no wire that was measured.',
          whatToDo: 'Record the probe point that it is joined to, with its readings.',
        },
      ],
    },
  ],
});
