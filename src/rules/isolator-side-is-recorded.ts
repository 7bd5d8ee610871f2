import type { JobInput } from '../records/job.ts';
import type { Rule, RuleHit } from './rule.ts';
import { workDone } from './work-done.ts';

const isolated = (side: 'battery' | 'switched' | null) => (job: JobInput) => ({
  ...job,
  vehicle: { ...job.vehicle, batteryIsolator: true },
  probePoints: (job.probePoints ?? []).map((point) =>
    point.name === 'P1' && side !== null ? { ...point, isolatorSide: side } : point,
  ),
});

/** On a vehicle with a battery isolator it is known on which side the supply was taken. */
export const isolatorSideIsRecorded: Rule = {
  id: 'isolator-side-is-recorded',
  group: 'wiring',
  severity: 'reason',
  summary: 'On a vehicle with a battery isolator it is known on which side the supply was taken.',
  why: 'On the switched side the device dies with the isolator; on the battery side it drains a battery that everybody takes for switched off.',
  source: 'common practice, no source',
  check: ({ job }) => {
    const { connections, probePoints } = workDone(job);
    if (!job.vehicle.batteryIsolator) return [];
    return (connections ?? [])
      .filter((made) => made.lead === 'supply')
      .flatMap((made): readonly RuleHit[] => {
        const side = probePoints?.find((point) => point.name === made.point)?.isolatorSide;
        if (side === 'battery') return [];
        return side === 'switched'
          ? [
              {
                at: made.lead,
                what: `${made.point} is on the switched side of the battery isolator: the device is off whenever the isolator is open.`,
                whatToDo: 'Tell the customer, or take the supply from the battery side, with its fuse at the tap.',
                severity: 'advise',
              },
            ]
          : [
              {
                at: made.lead,
                what: 'The vehicle has a battery isolator, and the side on which the supply was taken is not recorded.',
                whatToDo: 'Open the isolator and read the wire again: live means battery side. Record the side.',
              },
            ];
      });
  },
  examples: [
    { name: 'no isolator', change: (job) => job, finds: [] },
    { name: 'taken on the battery side', change: isolated('battery'), finds: [] },
    { name: 'taken on the switched side', change: isolated('switched'), finds: ['supply'] },
    { name: 'side not recorded', change: isolated(null), finds: ['supply'] },
  ],
};
