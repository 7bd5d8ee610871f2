import { millivoltsFromVolts } from '../../quantities/millivolts.ts';
import type { JobInput } from '../../records/job.ts';
import { nominalVolts } from '../../records/nominal-volts.ts';
import type { KeyPosition } from '../../records/wire-role.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** A wire counts as the middle of the pair within this share of half the supply (common practice, no source). */
const shareOfHalf = 0.1;

const truck = (volts: number) => (job: JobInput) => ({
  ...job,
  vehicle: { ...job.vehicle, systemVolts: 24 as const },
  supply: [{ key: 'out' as const, volts: 25.2 }],
  probePoints: (job.probePoints ?? []).map((point) => ({
    ...point,
    readings: point.name === 'P1' ? [{ key: 'out' as const, volts, secondsWaited: 900 }] : [],
  })),
});

const words = {
  summary: () => 'On 24 V nothing is taken from the middle of the battery pair.',
  why: 'The battery that feeds alone runs flat while the other is overcharged: both die within months.',
  says: {
    'half the supply': (wire: { point: string; millivolts: number; key: KeyPosition }, voice: Voice) => ({
      what: `${wire.point} reads ${voice.volts(wire.millivolts)} (${voice.key(wire.key)}) on a 24 V system: the middle of the battery pair, or a converter.`,
      whatToDo: 'Take 24 V over both batteries; where the device needs 12 V, use a converter fed with 24 V.',
    }),
  },
};

/** On 24 V nothing is taken from the middle of the battery pair. */
export const noSupplyFromHalfABatteryPair = defineRule({
  id: 'no-supply-from-half-a-battery-pair',
  group: 'wiring',
  severity: 'block',
  source: 'common practice, no source (two 12 V batteries in series make the 24 V system: Army TM 9-2320-211-20)',
  words,
  check: (facts) => {
    const { connections, probePoints } = workDone(facts.job);
    if (nominalVolts(facts.job) !== 24) return [];
    return (connections ?? [])
      .filter((made) => made.lead !== 'ground')
      .flatMap(({ lead, point = '' }) => {
        const readings = probePoints?.find((each) => each.name === point)?.readings ?? [];
        const half = readings.find((reading) => {
          if (reading.reference !== 'chassis' && reading.reference !== 'battery negative') return false;
          if (!reading.steady || reading.key === 'crank') return false;
          const middle = (facts.evidence.supply[reading.key]?.millivolts ?? 25_000) / 2;
          return Math.abs(millivoltsFromVolts(reading.volts) - middle) <= middle * shareOfHalf;
        });
        if (half === undefined) return [];
        const figures = { point, millivolts: millivoltsFromVolts(half.volts), key: half.key };
        return [{ at: lead, says: 'half the supply', figures }];
      });
  },
  examples: [
    { name: '25.2 V on 24 V', change: truck(25.2), finds: [] },
    {
      name: '12.6 V on 24 V',
      change: truck(12.6),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'P1 reads 12.60 V (key out) on a 24 V system: the middle of the battery pair, or a converter.',
          whatToDo: 'Take 24 V over both batteries; where the device needs 12 V, use a converter fed with 24 V.',
        },
      ],
    },
    { name: '12.6 V on 12 V', change: (job) => job, finds: [] },
  ],
});
