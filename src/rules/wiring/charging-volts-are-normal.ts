import { overVoltageMillivolts } from '../../evidence/electrical-limits.ts';
import { nominalVolts } from '../../records/nominal-volts.ts';
import { chargingMillivolts } from '../charging-volts.ts';
import { defineRule } from '../define-rule.ts';
import type { Hit, Voice } from '../rule-words.ts';

/** At or below the first nothing charges; from the second to the third all is well; between, smart charging may be at work. Millivolts. */
const limits = {
  12: { notCharging: 12_600, low: 13_500, high: 14_800 },
  24: { notCharging: 26_000, low: 27_000, high: 29_600 },
} as const;

type ChargingState = 'not charging' | 'low' | 'normal' | 'high';

function stateOf(millivolts: number, system: 12 | 24): ChargingState {
  const limit = limits[system];
  if (millivolts <= limit.notCharging) return 'not charging';
  if (millivolts < limit.low) return 'low';
  return millivolts > limit.high ? 'high' : 'normal';
}

type Seen = { readonly when: 'before' | 'after'; readonly millivolts: number; readonly engine: boolean };

const seen = ({ when, millivolts, engine }: Seen, voice: Voice) =>
  `${when === 'before' ? 'Before' : 'After'} the work the battery reads ${voice.volts(millivolts)} with ${engine ? 'the engine running' : 'ready'}`;

const words = {
  summary: () => 'With the engine running (ready) the battery is charged, before the work and after it.',
  why: 'A vehicle that does not charge stops within hours, and whoever worked on it last is asked why.',
  says: {
    'not charging': (battery: Seen, voice: Voice) => ({
      what: `${seen(battery, voice)}: it is not being charged.`,
      whatToDo: 'Read again at the posts and tell the customer; if it was so before, write that.',
    }),
    'no longer charging': (battery: Seen, voice: Voice) => ({
      what: `${seen(battery, voice)}: it is not being charged, and it was before.`,
      whatToDo: 'Look for a plug, fuse or ground left off, then read again.',
    }),
    low: (battery: Seen & { least: number; most: number }, voice: Voice) => ({
      what: `${seen(battery, voice)}, below the usual ${voice.voltRange(battery.least, battery.most)}.`,
      whatToDo: 'Smart charging may lower it: read again with lamps and blower on.',
    }),
    high: (battery: Seen & { least: number; most: number }, voice: Voice) => ({
      what: `${seen(battery, voice)}, above the usual ${voice.voltRange(battery.least, battery.most)}.`,
      whatToDo: 'A cold battery may raise it: read again when warm, and tell the customer if it stays.',
    }),
  },
};

/** With the engine running (ready) the battery is charged, before the work and after it. */
export const chargingVoltsAreNormal = defineRule({
  id: 'charging-volts-are-normal',
  group: 'wiring',
  severity: 'reason',
  source:
    'workshop windows 13.5 to 14.8 V and 27.0 to 29.6 V (common practice, no source); 24 V: 24.0 to 26.0 V is not charging, Army TM 9-2350-311-20-1 p. 3-166; 12 V regulator set to 13.6 to 14.2 V, Army TM 9-2330-356-14; hybrid and electric vehicles charge by a converter within the same window',
  words,
  check: (facts) => {
    const system = nominalVolts(facts.job);
    const engine = (facts.job.vehicle.drive ?? 'combustion') === 'combustion';
    const states = (['before', 'after'] as const).map((when) => {
      const millivolts = chargingMillivolts(facts.job, when);
      return { when, millivolts, state: millivolts === null ? null : stateOf(millivolts, system) };
    });
    const stateBefore = states[0]?.state ?? null;
    return states.flatMap(({ when, millivolts, state }): readonly Hit<typeof words>[] => {
      if (millivolts === null || state === null || state === 'normal') return [];
      const battery: Seen = { when, millivolts, engine };
      if (state === 'not charging')
        return when === 'after' && stateBefore !== null && stateBefore !== 'not charging'
          ? [{ at: when, says: 'no longer charging', figures: battery, severity: 'block' }]
          : [{ at: when, says: 'not charging', figures: battery, severity: 'reason' }];
      if (millivolts > overVoltageMillivolts[system]) return [];
      const figures = { ...battery, least: limits[system].low, most: limits[system].high };
      return [{ at: when, says: state, figures, severity: 'advise' }];
    });
  },
  examples: [
    { name: '14.1 V before and after', change: (job) => job, finds: [] },
    {
      name: '12.5 V after, where 14.1 V were read before',
      change: (job) => ({ ...job, after: { ...job.after, chargingVolts: 12.5 } }),
      finds: [
        {
          at: 'after',
          severity: 'block',
          what: 'After the work the battery reads 12.50 V with the engine running: it is not being charged, and it was before.',
          whatToDo: 'Look for a plug, fuse or ground left off, then read again.',
        },
      ],
    },
    {
      name: '13.1 V before, as smart charging may show',
      change: (job) => ({ ...job, before: { ...job.before, chargingVolts: 13.1 } }),
      finds: [
        {
          at: 'before',
          severity: 'advise',
          what: 'Before the work the battery reads 13.10 V with the engine running, below the usual 13.50 to 14.80 V.',
          whatToDo: 'Smart charging may lower it: read again with lamps and blower on.',
        },
      ],
    },
    {
      name: 'a 24 V truck at 25.9 V before and after',
      change: (job) => ({
        ...job,
        vehicle: { ...job.vehicle, systemVolts: 24 },
        supply: [{ key: 'running', volts: 25.9 }],
        before: { chargingVolts: 25.9 },
        after: { chargingVolts: 25.9 },
      }),
      finds: [
        {
          at: 'before',
          severity: 'reason',
          what: 'Before the work the battery reads 25.90 V with the engine running: it is not being charged.',
          whatToDo: 'Read again at the posts and tell the customer; if it was so before, write that.',
        },
        {
          at: 'after',
          severity: 'reason',
          what: 'After the work the battery reads 25.90 V with the engine running: it is not being charged.',
          whatToDo: 'Read again at the posts and tell the customer; if it was so before, write that.',
        },
      ],
    },
    {
      name: '14.9 V after, as a cold battery may show',
      change: (job) => ({ ...job, after: { ...job.after, chargingVolts: 14.9 } }),
      finds: [
        {
          at: 'after',
          severity: 'advise',
          what: 'After the work the battery reads 14.90 V with the engine running, above the usual 13.50 to 14.80 V.',
          whatToDo: 'A cold battery may raise it: read again when warm, and tell the customer if it stays.',
        },
      ],
    },
  ],
});
