import { isGroundDrop } from '../../evidence/ground-test.ts';
import { meterUncertaintyMillivolts } from '../../evidence/meter-uncertainty.ts';
import { millivoltsFromVolts } from '../../quantities/millivolts.ts';
import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** Two drops of one ground differ by this much from one moment to the next (common practice, no source). */
const alikeMillivolts = 50;

const words = {
  summary: () => 'The drop of the ground point and the reading of the ground wire under load say the same.',
  why: 'They are the same volts read twice: where they differ one of them is wrong, and the ground may be bad.',
  says: {
    differ: (drops: { point: string; recorded: number; read: number }, voice: Voice) => ({
      what: `The ground point is recorded with a drop of ${voice.volts(drops.recorded)}, ${drops.point} was read under load with ${voice.volts(drops.read)}.`,
      whatToDo: 'Read the drop again with the device working, and correct the one that is wrong.',
    }),
  },
};

const drop =
  (volts: number) =>
  (job: JobInput): JobInput => ({
    ...job,
    probePoints: (job.probePoints ?? []).map((point) => ({
      ...point,
      readings: (point.readings ?? []).map((each) =>
        each.reference === 'battery negative' && each.loaded === true ? { ...each, volts } : each,
      ),
    })),
  });

/** The drop of the ground point and the reading of the ground wire under load say the same. */
export const groundDropsAgree = defineRule({
  id: 'ground-drops-agree',
  group: 'wiring',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job, book }) => {
    const done = workDone(job);
    const recorded = done.ground?.dropMillivolts;
    if (recorded === undefined) return [];
    const joined = new Set((done.connections ?? []).filter((made) => made.lead === 'ground').map((made) => made.point));
    return (done.probePoints ?? [])
      .filter((point) => joined.has(point.name))
      .flatMap((point) => {
        const reading = point.readings.findLast(isGroundDrop);
        if (reading === undefined) return [];
        const read = millivoltsFromVolts(reading.volts);
        const meter = book.meters.find((each) => each.id === reading.meter) ?? book.meters[0] ?? null;
        const unsure = meterUncertaintyMillivolts(read, meter);
        const apart = Math.abs(Math.abs(read) - Math.abs(recorded));
        if (apart <= alikeMillivolts + unsure) return [];
        return [{ at: 'ground', says: 'differ', figures: { point: point.name, recorded, read } }];
      });
  },
  examples: [
    { name: '20 mV, read and recorded', change: (job) => job, finds: [] },
    { name: 'read a meter’s digit higher', change: drop(0.04), finds: [] },
    {
      name: '20 mV recorded, 1.9 V read',
      change: drop(1.9),
      finds: [
        {
          at: 'ground',
          severity: 'block',
          what: 'The ground point is recorded with a drop of 0.02 V, G1 was read under load with 1.90 V.',
          whatToDo: 'Read the drop again with the device working, and correct the one that is wrong.',
        },
      ],
    },
  ],
});
