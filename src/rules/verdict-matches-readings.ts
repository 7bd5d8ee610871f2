import type { Rule, RuleHit } from './rule.ts';

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
      finds: ['P3'],
    },
  ],
};
