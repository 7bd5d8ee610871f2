import type { JobInput } from '../../records/job.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

const vehicleFuse = (amperes: number) => (job: JobInput) => ({
  ...job,
  probePoints: (job.probePoints ?? []).map((point) =>
    point.name === 'P1' ? { ...point, vehicleFuseAmperes: amperes } : point,
  ),
});

/** The device's fuse is no larger than the vehicle's fuse before it. */
export const deviceFuseOpensFirst: Rule = {
  id: 'device-fuse-opens-first',
  group: 'wiring',
  severity: 'reason',
  summary: "The device's fuse is no larger than the vehicle's fuse before it.",
  why: 'A fault in the device would take down the circuit that was tapped, lamps or engine control among them.',
  source: 'common practice, no source; a protector as near the source as possible: FAA AC 43.13-1B 11-47',
  check: ({ job }) => {
    const { connections, probePoints } = workDone(job);
    return (connections ?? []).flatMap((made): readonly RuleHit[] => {
      const before = probePoints?.find((point) => point.name === made.point)?.vehicleFuseAmperes;
      const own = made.fuse?.ratingAmperes;
      if (before === undefined || own === undefined || own <= before) return [];
      return [
        {
          at: made.lead,
          what: `The ${made.lead} lead has a fuse of ${own} A behind a vehicle fuse of ${before} A.`,
          whatToDo: 'Fit the smaller fuse the device maker names, or choose a feed with a larger fuse.',
        },
      ];
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
};
