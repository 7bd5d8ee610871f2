import type { Trap } from '../../evidence/evidence.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () =>
    'No two readings of one place contradict each other, and the battery’s own readings are those of a battery.',
  why: 'Where two readings cannot both be right nothing follows from either, and a wire compared with a wrong battery reading may be anything.',
  says: {
    'two differ': (readings: { trap: Trap }, voice: Voice) => ({
      what: voice.trap(readings.trap),
      whatToDo: 'Keep the reading that is right, and take the other off the record.',
    }),
    'no battery': (readings: { trap: Trap }, voice: Voice) => ({
      what: voice.trap(readings.trap),
      whatToDo: 'Read the battery again at its own posts, DC volts, red on plus, and correct the record.',
    }),
    'hands off': (readings: { trap: Trap }, voice: Voice) => ({
      what: voice.trap(readings.trap),
      whatToDo:
        'Take every lead off it and find another wire; the vehicle maker’s instructions and licensed practice come first.',
    }),
  },
};

const kinds = new Map<Trap['kind'], keyof typeof words.says>([
  ['readings disagree', 'two differ'],
  ['no battery', 'no battery'],
  ['forty-eight volts', 'hands off'],
]);

/** No two readings of one place contradict each other, and the battery's own readings are those of a battery. */
export const readingsCanAllBeRight = defineRule({
  id: 'readings-can-all-be-right',
  group: 'wiring',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job, evidence }) => {
    // a flat battery, read where no wire is measured, is a fact and no mistake
    if ((workDone(job).probePoints ?? []).length === 0) return [];
    const traps = [...evidence.traps, ...evidence.wires.flatMap((wire) => wire.traps)];
    return traps.flatMap((trap) => {
      const says = kinds.get(trap.kind);
      return says === undefined ? [] : [{ at: trap.point === '' ? 'supply' : trap.point, says, figures: { trap } }];
    });
  },
  examples: [
    { name: 'each place read once', change: (job) => job, finds: [] },
    {
      name: 'a flat battery on a visit that measures no wire',
      change: ({ probePoints: _points, connections: _made, ...job }) => ({
        ...job,
        identity: { ...job.identity, visit: 'service call' as const },
        supply: [{ key: 'out' as const, volts: 3.2 }],
      }),
      finds: [],
    },
    {
      name: 'the ignition wire read once live and once dead with the engine running',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P2'
            ? { ...point, readings: [...(point.readings ?? []), { key: 'running' as const, volts: 0 }] }
            : point,
        ),
      }),
      finds: [
        {
          at: 'P2',
          severity: 'block',
          what: 'P2 was read as 14.06 V and 0.00 V with the engine running: one of them is wrong, read it again.',
          whatToDo: 'Keep the reading that is right, and take the other off the record.',
        },
      ],
    },
    {
      name: 'the battery read as nothing with the key out',
      change: (job) => ({ ...job, supply: [{ key: 'out' as const, volts: 0.1 }] }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The battery reads 0.10 V with the key out: the probes are not on its posts, the meter is on AC, or a fuse in its lead is blown. Nothing follows from it; read the battery again.',
          whatToDo: 'Read the battery again at its own posts, DC volts, red on plus, and correct the record.',
        },
      ],
    },
    {
      name: 'the battery read twice with very different volts',
      change: (job) => ({
        ...job,
        supply: [...(job.supply ?? []), { key: 'on' as const, volts: 6.2 }],
      }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The supply was read as 12.41 V and 6.20 V with the key on: one of them is wrong, and nothing can be compared with it.',
          whatToDo: 'Keep the reading that is right, and take the other off the record.',
        },
      ],
    },
    {
      name: 'a wire of 48 volts',
      change: (job) => ({
        ...job,
        probePoints: [...(job.probePoints ?? []), { name: 'P9', readings: [{ key: 'on' as const, volts: 48.2 }] }],
      }),
      finds: [
        {
          at: 'P9',
          severity: 'block',
          what: 'P9 reads 48.20 V: a 48 V line. Hands off: never splice it, and leave it to those licensed for it.',
          whatToDo:
            'Take every lead off it and find another wire; the vehicle maker’s instructions and licensed practice come first.',
        },
      ],
    },
  ],
});
