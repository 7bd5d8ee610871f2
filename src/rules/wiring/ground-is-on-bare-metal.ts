import type { JobInput } from '../../records/job.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

const withGround = (fields: Partial<NonNullable<JobInput['ground']>>) => (job: JobInput) => ({
  ...job,
  ground: { kind: 'chassis bolt' as const, where: 'cowl', ...job.ground, ...fields },
});

/** The ground stands on bare metal, held so that it cannot shake loose. */
export const groundIsOnBareMetal: Rule = {
  id: 'ground-is-on-bare-metal',
  group: 'wiring',
  severity: 'reason',
  summary: 'The ground stands on bare metal, held so that it cannot shake loose.',
  why: 'Paint, rust and vibration turn a ground that reads well today into the fault nobody finds next winter.',
  source:
    'Army TM 5-3805-255-14 (remove, clean to bare metal, refit tight); shakeproof washer and drilled screws: common practice, no source',
  check: ({ job }) => {
    const { ground } = workDone(job);
    if (ground === undefined) return [];
    const hits: RuleHit[] = [];
    if (ground.bareMetal === false)
      hits.push({
        at: 'ground',
        what: `The ground (${ground.where}) does not stand on bare metal.`,
        whatToDo: 'Take off paint and rust, refit tight, and seal the edge.',
      });
    if (ground.shakeproof === false)
      hits.push({
        at: 'ground',
        what: `Nothing keeps the ground (${ground.where}) from shaking loose.`,
        whatToDo: 'Add a toothed washer or a locking nut.',
        severity: 'advise',
      });
    if (ground.kind === 'drilled screw')
      hits.push({
        at: 'ground',
        what: `The ground (${ground.where}) is a screw in a drilled hole.`,
        whatToDo: 'Prefer a factory ground stud; else look behind the panel first and protect the hole from rust.',
        severity: 'advise',
      });
    return hits;
  },
  examples: [
    { name: 'a factory stud on bare metal with a toothed washer', change: (job) => job, finds: [] },
    {
      name: 'painted metal',
      change: withGround({ bareMetal: false }),
      finds: [
        {
          at: 'ground',
          severity: 'reason',
          what: 'The ground (cowl, left of the pedal bracket) does not stand on bare metal.',
          whatToDo: 'Take off paint and rust, refit tight, and seal the edge.',
        },
      ],
    },
    {
      name: 'a plain washer',
      change: withGround({ shakeproof: false }),
      finds: [
        {
          at: 'ground',
          severity: 'advise',
          what: 'Nothing keeps the ground (cowl, left of the pedal bracket) from shaking loose.',
          whatToDo: 'Add a toothed washer or a locking nut.',
        },
      ],
    },
    {
      name: 'a drilled screw',
      change: withGround({ kind: 'drilled screw' }),
      finds: [
        {
          at: 'ground',
          severity: 'advise',
          what: 'The ground (cowl, left of the pedal bracket) is a screw in a drilled hole.',
          whatToDo: 'Prefer a factory ground stud; else look behind the panel first and protect the hole from rust.',
        },
      ],
    },
  ],
};
