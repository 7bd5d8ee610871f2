import type { Trap } from '../../evidence/evidence.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';

const words = {
  summary: () => 'The readings show the nominal system that the record names.',
  why: 'A 12 V device on 24 V is destroyed; a wrong record misleads the next fitter.',
  says: {
    differs: (system: { trap: Trap }, voice: Voice) => ({
      what: voice.trap(system.trap),
      whatToDo: 'Measure at the battery posts again and correct the record.',
    }),
  },
};

/** The readings show the nominal system that the record names. */
export const systemVoltsAgree = defineRule({
  id: 'system-volts-agree',
  group: 'wiring',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ evidence }) =>
    evidence.traps
      .filter((trap) => trap.kind === 'system differs')
      .map((trap) => ({ at: '', says: 'differs', figures: { trap } })),
  examples: [
    { name: '12 V as recorded', change: (job) => job, finds: [] },
    {
      name: '24 V recorded, 12 V read',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, systemVolts: 24 } }),
      finds: [
        {
          at: '',
          severity: 'block',
          what: 'The readings show a 12 V system, the record says 24 V.',
          whatToDo: 'Measure at the battery posts again and correct the record.',
        },
      ],
    },
  ],
});
