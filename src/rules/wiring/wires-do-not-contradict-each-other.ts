import type { Trap } from '../../evidence/evidence.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';

const words = {
  summary: () => 'No two wires of a job say what cannot both be true.',
  why: 'One pin cannot be two things, and a constant does not fall where another holds: one of the readings or names is wrong, and a sheet built on it misleads.',
  says: {
    contradict: (wires: { trap: Trap }, voice: Voice) => ({
      what: voice.trap(wires.trap),
      whatToDo: 'Read both again in the same key position and correct name, pin or verdict of the wrong one.',
    }),
  },
};

/** No two wires of a job say what cannot both be true. */
export const wiresDoNotContradictEachOther = defineRule({
  id: 'wires-do-not-contradict-each-other',
  group: 'wiring',
  severity: 'block',
  source: 'DIN 72552 terminal definitions; the comparison of wires is common practice, no source',
  words,
  check: ({ job, evidence }) => {
    if (job.identity.visit === 'wasted visit') return [];
    return [...evidence.traps, ...evidence.wires.flatMap((wire) => wire.traps)]
      .filter((trap) => trap.kind === 'contradicts another wire')
      .map((trap) => ({ at: trap.point, says: 'contradict', figures: { trap } }));
  },
  examples: [
    { name: 'wires that agree', change: (job) => job, finds: [] },
    {
      name: 'the pin of the constant named again for the ignition',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) => (point.name === 'P2' ? { ...point, pin: '1' } : point)),
      }),
      finds: [
        {
          at: 'P2',
          severity: 'block',
          what: 'P2 and P1 are the same pin (ignition switch, 6-way, 1) and cannot be both constant and ignition.',
          whatToDo: 'Read both again in the same key position and correct name, pin or verdict of the wrong one.',
        },
      ],
    },
  ],
});
