import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Hit } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const withGround = (fields: Partial<NonNullable<JobInput['ground']>>) => (job: JobInput) => ({
  ...job,
  ground: { kind: 'chassis bolt' as const, where: 'cowl', ...job.ground, ...fields },
});

const words = {
  summary: () => 'The ground stands on bare metal, held so that it cannot shake loose.',
  why: 'Paint, rust and vibration turn a ground that reads well today into the fault nobody finds next winter.',
  says: {
    'not bare': (ground: { where: string }) => ({
      what: `The ground (${ground.where}) does not stand on bare metal.`,
      whatToDo: 'Take off paint and rust, refit tight, and seal the edge.',
    }),
    'may shake loose': (ground: { where: string }) => ({
      what: `Nothing keeps the ground (${ground.where}) from shaking loose.`,
      whatToDo: 'Add a toothed washer or a locking nut.',
    }),
    'drilled hole': (ground: { where: string }) => ({
      what: `The ground (${ground.where}) is a screw in a drilled hole.`,
      whatToDo: 'Prefer a factory ground stud; else look behind the panel first and protect the hole from rust.',
    }),
  },
};

/** The ground stands on bare metal, held so that it cannot shake loose. */
export const groundIsOnBareMetal = defineRule({
  id: 'ground-is-on-bare-metal',
  group: 'wiring',
  severity: 'reason',
  source:
    'Army TM 5-3805-255-14 (remove, clean to bare metal, refit tight); shakeproof washer and drilled screws: common practice, no source',
  words,
  check: ({ job }) => {
    const { ground } = workDone(job);
    if (ground === undefined) return [];
    const found = { at: 'ground', figures: { where: ground.where } };
    const hits: Hit<typeof words>[] = [];
    if (ground.bareMetal === false) hits.push({ ...found, says: 'not bare' });
    if (ground.shakeproof === false) hits.push({ ...found, says: 'may shake loose', severity: 'advise' });
    if (ground.kind === 'drilled screw') hits.push({ ...found, says: 'drilled hole', severity: 'advise' });
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
});
