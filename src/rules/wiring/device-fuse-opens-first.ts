import type { DeviceLead } from '../../records/connection.ts';
import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const vehicleFuse = (amperes: number) => (job: JobInput) => ({
  ...job,
  probePoints: (job.probePoints ?? []).map((point) =>
    point.name === 'P1' ? { ...point, vehicleFuseAmperes: amperes } : point,
  ),
});

const words = {
  summary: () => "The device's fuse is no larger than the vehicle's fuse before it.",
  why: 'A fault in the device would take down the circuit that was tapped, lamps or engine control among them.',
  says: {
    'larger than the vehicle’s': (fuse: { lead: DeviceLead; own: number; before: number }, voice: Voice) => ({
      what: `The ${voice.lead(fuse.lead)} lead has a fuse of ${voice.decimal(fuse.own)} A behind a vehicle fuse of ${voice.decimal(fuse.before)} A.`,
      whatToDo: 'Fit the smaller fuse the device maker names, or choose a feed with a larger fuse.',
    }),
  },
};

/** The device's fuse is no larger than the vehicle's fuse before it. */
export const deviceFuseOpensFirst = defineRule({
  id: 'device-fuse-opens-first',
  group: 'wiring',
  severity: 'reason',
  source: 'common practice, no source; a protector as near the source as possible: FAA AC 43.13-1B 11-47',
  words,
  check: ({ job }) => {
    const { connections, probePoints } = workDone(job);
    return (connections ?? []).flatMap(({ lead, point, fuse }) => {
      const before = probePoints?.find((each) => each.name === point)?.vehicleFuseAmperes;
      const own = fuse?.ratingAmperes;
      if (before === undefined || own === undefined || own <= before) return [];
      return [{ at: lead, says: 'larger than the vehicle’s', figures: { lead, own, before } }];
    });
  },
  examples: [
    { name: '3 A behind 30 A', change: vehicleFuse(30), finds: [] },
    { name: '3 A behind 3 A', change: vehicleFuse(3), finds: [] },
    {
      name: '3 A behind 2 A',
      change: vehicleFuse(2),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The supply lead has a fuse of 3 A behind a vehicle fuse of 2 A.',
          whatToDo: 'Fit the smaller fuse the device maker names, or choose a feed with a larger fuse.',
        },
      ],
    },
  ],
});
