import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import { defineRule } from '../define-rule.ts';

const words = {
  summary: () => 'The battery lasts as long as the vehicle usually stands.',
  why: 'A vehicle that does not start after the holidays is blamed on whatever was fitted last.',
  says: {
    'runs down': (battery: { milliamps: number; percent: number | null; days: number; wanted: number }) => ({
      what: `With ${battery.milliamps} mA asleep the battery${battery.percent === null ? '' : ` (${battery.percent} % full at rest)`} is down to half after ${battery.days} days; the vehicle stands up to ${battery.wanted}.`,
      whatToDo: 'Tell the customer; a battery isolator or a charger helps.',
    }),
  },
};

/** The battery lasts as long as the vehicle usually stands. */
export const standingDrainIsAcceptable = defineRule({
  id: 'standing-drain-is-acceptable',
  group: 'wiring',
  severity: 'advise',
  source:
    'days = usable Ah / (A x 24); half the capacity usable is common practice, no source; charge by rest volts: Army TM 5-3805-262-20, p. 5-142',
  words,
  check: ({ job, profile, book }) => {
    const electrics = workOutElectrics(job, profile, book);
    const { standingDays: days, standingDaysWanted: wanted, asleepMilliamps: milliamps } = electrics;
    if (job.identity.visit === 'wasted visit' || days === null || milliamps === null || days >= wanted) return [];
    return [{ at: '', says: 'runs down', figures: { milliamps, percent: electrics.batteryPercent, days, wanted } }];
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
});
