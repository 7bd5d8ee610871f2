import type { Rule, RuleHit } from './rule.ts';

/** The ground drops at most 0.1 V under load. */
export const groundDropIsSmall: Rule = {
  id: 'ground-drop-is-small',
  group: 'wiring',
  severity: 'reason',
  summary: 'The ground drops at most 0.1 V under load.',
  why: 'A poor ground makes a device fail in ways that look like everything else.',
  source: 'common practice, no source',
  check: ({ job }) =>
    job.ground?.dropMillivolts !== undefined && Math.abs(job.ground.dropMillivolts) > 100
      ? [
          {
            at: 'ground',
            what: `The ground drops ${job.ground.dropMillivolts} mV at ${job.ground.testMilliamps ?? 'an unknown number of'} mA; 100 mV at most.`,
            whatToDo: 'Clean to bare metal, tighten, or choose another ground.',
          } satisfies RuleHit,
        ]
      : [],
  examples: [
    {
      name: '100 mV',
      change: (job) => ({ ...job, ground: { kind: 'chassis bolt', where: 'cowl', dropMillivolts: 100 } }),
      finds: [],
    },
    {
      name: '101 mV',
      change: (job) => ({ ...job, ground: { kind: 'chassis bolt', where: 'cowl', dropMillivolts: 101 } }),
      finds: ['ground'],
    },
  ],
};
