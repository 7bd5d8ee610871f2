import type { Rule, RuleHit } from './rule.ts';

/** The installer's word on each wire agrees with its readings. */
export const verdictMatchesTheReadings: Rule = {
  id: 'verdict-matches-the-readings',
  group: 'wiring',
  severity: 'block',
  summary: "The installer's word on each wire agrees with its readings.",
  why: 'A device on the wrong wire drains the battery, misses drives, or loses its supply in crank.',
  source: 'common practice, no source',
  check: ({ job, evidence }) =>
    job.identity.visit === 'wasted visit'
      ? []
      : evidence.wires.flatMap((wire): readonly RuleHit[] => {
          if (wire.agreement !== 'contradiction') return [];
          return [
            {
              at: wire.point,
              what: `${wire.point} is called ${wire.verdict ?? 'nothing'}, but its readings say otherwise. ${wire.sentence}`,
              whatToDo: 'Read the wire again in each key position; move the lead if the readings stand.',
            },
          ];
        }),
  examples: [
    { name: 'every wire as its readings say', change: (job) => job, finds: [] },
    {
      name: 'an ignition wire called constant',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.verdict === 'ignition' ? { ...point, verdict: 'constant' } : point,
        ),
      }),
      finds: ['P2'],
    },
  ],
};
