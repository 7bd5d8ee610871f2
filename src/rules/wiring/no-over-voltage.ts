import { overVoltageMillivolts } from '../../evidence/electrical-limits.ts';
import { millivoltsFromVolts } from '../../quantities/millivolts.ts';
import { nominalVolts } from '../../records/nominal-volts.ts';
import type { Reading } from '../../records/reading.ts';
import { defineRule } from '../define-rule.ts';
import type { JobFacts } from '../job-facts.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const byGround = (reading: Reading) => reading.reference === 'chassis' || reading.reference === 'battery negative';

function highest(job: JobFacts['job'], when: 'before' | 'after'): number | null {
  const done = workDone(job);
  const volts = [
    ...(done.supply ?? []).filter((each) => each.taken === when).map((each) => each.volts),
    ...(done.probePoints ?? []).flatMap((point) =>
      point.readings.filter((each) => each.taken === when && byGround(each)).map((each) => each.volts),
    ),
    ...[done[when]?.restVolts, done[when]?.chargingVolts].filter((each) => each !== undefined),
  ];
  return volts.length === 0 ? null : millivoltsFromVolts(Math.max(...volts));
}

/** A regulator gives so much more in the cold, 12 V: told, but no excuse is wanted (common practice, no source). */
const coldMillivolts = 150;

const readAgain =
  'Read again at the battery posts; if it stays, have the regulator and its sense wire looked at first.';

const words = {
  summary: () => 'No reading lies above what a sound charging system gives.',
  why: 'Over-voltage boils the battery and ages every device on the vehicle, the new one too.',
  says: {
    'too high': (reading: { when: 'before' | 'after'; most: number; limit: number }, voice: Voice) => ({
      what: `${reading.when === 'before' ? 'Before' : 'After'} the work a reading shows ${voice.volts(reading.most)}, above ${voice.volts(reading.limit)}.`,
      whatToDo: readAgain,
    }),
    'came with the work': (reading: { most: number; limit: number }, voice: Voice) => ({
      what: `After the work a reading shows ${voice.volts(reading.most)}, above ${voice.volts(reading.limit)}; before the work none did.`,
      whatToDo: readAgain,
    }),
  },
};

/** No reading lies above what a sound charging system gives. */
export const noOverVoltage = defineRule({
  id: 'no-over-voltage',
  group: 'wiring',
  severity: 'reason',
  source:
    '15.0 V and 30.0 V: common practice, no source; 12 V regulator above 14.2 V suspect, Army TM 9-2330-356-14; 24 V above 28.5 V to be looked into, Army TM 9-2350-311-20-1 p. 3-166',
  words,
  check: (facts) => {
    const system = nominalVolts(facts.job);
    const limit = overVoltageMillivolts[system];
    const cold = limit + (coldMillivolts * system) / 12;
    const before = highest(facts.job, 'before');
    return (['before', 'after'] as const).flatMap((when): readonly Hit<typeof words>[] => {
      const most = highest(facts.job, when);
      if (most === null || most <= limit) return [];
      if (when === 'after' && before !== null && before <= limit && most > cold)
        return [{ at: when, says: 'came with the work', figures: { most, limit }, severity: 'block' }];
      return [
        { at: when, says: 'too high', figures: { when, most, limit }, ...(most > cold ? {} : { severity: 'advise' }) },
      ];
    });
  },
  examples: [
    { name: '14.1 V with the engine running', change: (job) => job, finds: [] },
    {
      name: 'exactly 15.0 V',
      change: (job) => ({ ...job, before: { ...job.before, chargingVolts: 15 } }),
      finds: [],
    },
    {
      name: '15.4 V before the work',
      change: (job) => ({ ...job, before: { ...job.before, chargingVolts: 15.4 } }),
      finds: [
        {
          at: 'before',
          severity: 'reason',
          what: 'Before the work a reading shows 15.40 V, above 15.00 V.',
          whatToDo:
            'Read again at the battery posts; if it stays, have the regulator and its sense wire looked at first.',
        },
      ],
    },
    {
      name: '15.4 V after the work only',
      change: (job) => ({ ...job, after: { ...job.after, chargingVolts: 15.4 } }),
      finds: [
        {
          at: 'after',
          severity: 'block',
          what: 'After the work a reading shows 15.40 V, above 15.00 V; before the work none did.',
          whatToDo:
            'Read again at the battery posts; if it stays, have the regulator and its sense wire looked at first.',
        },
      ],
    },
  ],
});
