import type { Rule, RuleHit } from '../rule.ts';

/** The readings show the nominal system that the record names. */
export const systemVoltsAgree: Rule = {
  id: 'system-volts-agree',
  group: 'wiring',
  severity: 'block',
  summary: 'The readings show the nominal system that the record names.',
  why: 'A 12 V device on 24 V is destroyed; a wrong record misleads the next fitter.',
  source: 'common practice, no source',
  check: ({ evidence }) =>
    evidence.traps
      .filter((trap) => trap.kind === 'system differs')
      .map(
        (trap): RuleHit => ({
          at: '',
          what: trap.sentence,
          whatToDo: 'Measure at the battery posts again and mend the record.',
        }),
      ),
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
          whatToDo: 'Measure at the battery posts again and mend the record.',
        },
      ],
    },
  ],
};
