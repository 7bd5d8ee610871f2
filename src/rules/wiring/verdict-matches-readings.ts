import type { Rule, RuleHit } from '../rule.ts';

/** No verdict is contradicted by the readings. */
export const verdictMatchesReadings: Rule = {
  id: 'verdict-matches-readings',
  group: 'wiring',
  severity: 'block',
  summary: 'No verdict is contradicted by the readings.',
  why: 'A verdict that the meter contradicts is a wrong connection waiting to be found by the driver.',
  source: 'DIN 72552 terminal definitions; the proof by readings is common practice, no source',
  check: ({ job, evidence }) =>
    (job.identity.visit === 'wasted visit' ? [] : evidence.wires)
      .filter((wire) => wire.agreement === 'contradiction')
      .map(
        (wire): RuleHit => ({
          at: wire.point,
          what: `The verdict on ${wire.point} is "${wire.verdict}", the readings rule that out. ${wire.sentence}`,
          whatToDo: 'Read it again in each key position; if the readings stand, find another wire.',
        }),
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
          what: 'The verdict on P3 is "ignition", the readings rule that out. Orange with black (P3) is accessory (terminal 75): dead with the key out (0.00 V after 12 min); battery volts in accessory (12.20 V), with the key on (12.15 V) and with the engine running (13.78 V).',
          whatToDo: 'Read it again in each key position; if the readings stand, find another wire.',
        },
      ],
    },
  ],
};
