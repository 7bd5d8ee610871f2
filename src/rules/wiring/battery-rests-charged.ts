import { batteryPercent, loadTestMillivolts } from '../../electrics/battery-state.ts';
import { millivoltsFromVolts } from '../../quantities/millivolts.ts';
import { nominalVolts } from '../../records/nominal-volts.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: (voice: Voice) =>
    `The battery rests at ${voice.voltLimit(loadTestMillivolts)} (${voice.voltLimit(2 * loadTestMillivolts)}) or more, before the work and after it.`,
  why: 'A weak battery falls deeper while cranking and stands for fewer days; the sheet should say that it was found so.',
  says: {
    'rests low': (
      battery: { when: 'before' | 'after'; millivolts: number; percent: number; least: number },
      voice: Voice,
    ) => ({
      what: `${battery.when === 'before' ? 'Before' : 'After'} the work the battery rests at ${voice.volts(battery.millivolts)}, about ${battery.percent} % full; ${voice.volts(battery.least)} is the least of a sound one.`,
      whatToDo: 'Charge it and have it tested under load; tell the customer.',
    }),
  },
};

/** The battery rests at 12.4 V (24.8 V) or more, before the work and after it. */
export const batteryRestsCharged = defineRule({
  id: 'battery-rests-charged',
  group: 'wiring',
  severity: 'advise',
  source: 'Army TM 5-3805-262-20, p. 5-142 (below 12.4 V: load test); a 24 V pair has twice the volts',
  words,
  check: (facts) => {
    const system = nominalVolts(facts.job);
    const done = workDone(facts.job);
    return (['before', 'after'] as const).flatMap((when) => {
      const volts = done[when]?.restVolts;
      if (volts === undefined) return [];
      const millivolts = millivoltsFromVolts(volts);
      const least = (loadTestMillivolts * system) / 12;
      if (millivolts >= least) return [];
      const percent = batteryPercent(millivolts, system) ?? 0;
      return [{ at: when, says: 'rests low', figures: { when, millivolts, percent, least } }];
    });
  },
  examples: [
    { name: '12.58 V before, 12.55 V after', change: (job) => job, finds: [] },
    { name: 'exactly 12.4 V', change: (job) => ({ ...job, before: { ...job.before, restVolts: 12.4 } }), finds: [] },
    {
      name: '12.2 V before',
      change: (job) => ({ ...job, before: { ...job.before, restVolts: 12.2 } }),
      finds: [
        {
          at: 'before',
          severity: 'advise',
          what: 'Before the work the battery rests at 12.20 V, about 50 % full; 12.40 V is the least of a sound one.',
          whatToDo: 'Charge it and have it tested under load; tell the customer.',
        },
      ],
    },
  ],
});
