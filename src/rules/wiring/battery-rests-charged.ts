import { batteryPercent, loadTestMillivolts } from '../../electrics/battery-state.ts';
import { millivoltsFromVolts, writeVolts } from '../../quantities/millivolts.ts';
import { nominalVolts } from '../nominal-volts.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The battery rests at 12.4 V (24.8 V) or more, before the work and after it. */
export const batteryRestsCharged: Rule = {
  id: 'battery-rests-charged',
  group: 'wiring',
  severity: 'advise',
  summary: 'The battery rests at 12.4 V (24.8 V) or more, before the work and after it.',
  why: 'A weak battery falls deeper while cranking and stands for fewer days; the sheet should say that it was found so.',
  source: 'Army TM 5-3805-262-20, p. 5-142 (below 12.4 V: load test); a 24 V pair has twice the volts',
  check: (facts) => {
    const system = nominalVolts(facts);
    const done = workDone(facts.job);
    return (['before', 'after'] as const).flatMap((when): readonly RuleHit[] => {
      const volts = done[when]?.restVolts;
      if (volts === undefined) return [];
      const millivolts = millivoltsFromVolts(volts);
      const least = (loadTestMillivolts * system) / 12;
      if (millivolts >= least) return [];
      return [
        {
          at: when,
          what: `${when === 'before' ? 'Before' : 'After'} the work the battery rests at ${writeVolts(millivolts)} V, about ${batteryPercent(millivolts, system) ?? 0} % full; ${writeVolts(least)} V is the least of a sound one.`,
          whatToDo: 'Charge it and have it tested under load; tell the customer.',
        },
      ];
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
};
