import type { WireEvidence } from '../../evidence/evidence.ts';
import type { WireRole } from '../../records/wire-role.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';

const words = {
  summary: () => 'No verdict is contradicted by the readings.',
  why: 'A verdict that the meter contradicts is a wrong connection waiting to be found by the driver.',
  says: {
    contradicted: (wire: { verdict: WireRole; evidence: WireEvidence }, voice: Voice) => ({
      what: `The verdict on ${wire.evidence.point} is "${voice.role(wire.verdict)}", the readings rule that out. ${voice.wire(wire.evidence)}`,
      whatToDo: 'Read it again in each key position; if the readings stand, find another wire.',
    }),
  },
};

/** No verdict is contradicted by the readings. */
export const verdictMatchesReadings = defineRule({
  id: 'verdict-matches-readings',
  group: 'wiring',
  severity: 'block',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  words,
  check: ({ job, evidence }) =>
    (job.identity.visit === 'wasted visit' ? [] : evidence.wires).flatMap((wire) =>
      wire.agreement === 'contradiction' && wire.verdict !== null
        ? [{ at: wire.point, says: 'contradicted', figures: { verdict: wire.verdict, evidence: wire } }]
        : [],
    ),
  examples: [
    { name: 'verdicts that agree', change: (job) => job, finds: [] },
    {
      name: 'an accessory line called ignition',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P3' ? { ...point, verdict: 'ignition' } : point,
        ),
      }),
      finds: [
        {
          at: 'P3',
          severity: 'block',
          what: 'The verdict on P3 is "ignition", the readings rule that out. Orange with black stripe (P3) is accessory (terminal 75): dead with the key out (0.00 V after 12 min); battery volts in accessory (12.20 V), with the key on (12.15 V) and with the engine running (13.78 V).',
          whatToDo: 'Read it again in each key position; if the readings stand, find another wire.',
        },
      ],
    },
  ],
});
