import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import type { Rule, RuleHit } from '../rule.ts';

/** The battery lasts as long as the vehicle usually stands. */
export const standingDrainIsAcceptable: Rule = {
  id: 'standing-drain-is-acceptable',
  group: 'wiring',
  severity: 'advise',
  summary: 'The battery lasts as long as the vehicle usually stands.',
  why: 'A vehicle that does not start after the holidays is blamed on whatever was fitted last.',
  source:
    'days = usable Ah / (A x 24); half the capacity usable is common practice, no source; charge by rest volts: Army TM 5-3805-262-20, p. 5-142',
  check: ({ job, profile, book }) => {
    const { standingDays, standingDaysWanted, asleepMilliamps, batteryPercent } = workOutElectrics(job, profile, book);
    return job.identity.visit !== 'wasted visit' && standingDays !== null && standingDays < standingDaysWanted
      ? [
          {
            at: '',
            what: `With ${asleepMilliamps} mA asleep the battery${batteryPercent === null ? '' : ` (${batteryPercent} % full at rest)`} is down to half after ${standingDays} days; the vehicle stands up to ${standingDaysWanted}.`,
            whatToDo: 'Tell the customer; a battery isolator or a charger helps.',
          } satisfies RuleHit,
        ]
      : [];
  },
  examples: [
    { name: '70 Ah and 22 mA for 21 days', change: (job) => job, finds: [] },
    {
      name: '70 Ah and 22 mA for 100 days',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, standingDays: 100 } }),
      finds: [
        {
          at: '',
          severity: 'advise',
          what: 'With 22 mA asleep the battery (93 % full at rest) is down to half after 57 days; the vehicle stands up to 100.',
          whatToDo: 'Tell the customer; a battery isolator or a charger helps.',
        },
      ],
    },
    {
      name: '70 Ah, half of it left',
      change: (job) => ({ ...job, before: { ...job.before, restVolts: 12.25 } }),
      finds: [
        {
          at: '',
          severity: 'advise',
          what: 'With 22 mA asleep the battery (56 % full at rest) is down to half after 7 days; the vehicle stands up to 21.',
          whatToDo: 'Tell the customer; a battery isolator or a charger helps.',
        },
      ],
    },
  ],
};
