import type { JobInput } from '../../records/job.ts';
import type { ProbePoint } from '../../records/probe-point.ts';
import { defineRule } from '../define-rule.ts';
import type { Hit } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** Above this a wire is live, volts (common practice, no source). */
const liveVoltsMin = 9;

const isolated = (side: 'battery' | 'switched' | null) => (job: JobInput) => ({
  ...job,
  vehicle: { ...job.vehicle, batteryIsolator: true },
  probePoints: (job.probePoints ?? []).map((point) =>
    point.name === 'P1' && side !== null ? { ...point, isolatorSide: side } : point,
  ),
});

/** The side of the isolator that a wire is on: as recorded, else as a reading with the isolator open shows. */
function sideOf(point: ProbePoint | undefined): ProbePoint['isolatorSide'] {
  const opened = point?.readings.find((each) => each.isolator === 'open' && each.reference !== 'probe point');
  if (point?.isolatorSide !== undefined || opened === undefined) return point?.isolatorSide;
  return opened.volts > liveVoltsMin ? 'battery' : 'switched';
}

const words = {
  summary: () => 'On a vehicle with a battery isolator it is known on which side the supply was taken.',
  why: 'On the switched side the device dies with the isolator; on the battery side it drains a battery that everybody takes for switched off.',
  says: {
    'switched side': (wire: { point: string }) => ({
      what: `${wire.point} is on the switched side of the battery isolator: the device is off whenever the isolator is open.`,
      whatToDo: 'Tell the customer, or take the supply from the battery side, with its fuse at the tap.',
    }),
    'not recorded': () => ({
      what: 'The vehicle has a battery isolator, and the side on which the supply was taken is not recorded.',
      whatToDo: 'Open the isolator and read the wire again: live means battery side. Record the side.',
    }),
  },
};

/** On a vehicle with a battery isolator it is known on which side the supply was taken. */
export const isolatorSideIsRecorded = defineRule({
  id: 'isolator-side-is-recorded',
  group: 'wiring',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { connections, probePoints } = workDone(job);
    if (!job.vehicle.batteryIsolator) return [];
    return (connections ?? [])
      .filter((made) => made.lead === 'supply')
      .flatMap(({ lead, point }): readonly Hit<typeof words>[] => {
        const side = sideOf(probePoints?.find((each) => each.name === point));
        if (side === 'battery') return [];
        return side === 'switched' && point !== undefined
          ? [{ at: lead, says: 'switched side', figures: { point }, severity: 'advise' }]
          : [{ at: lead, says: 'not recorded' }];
      });
  },
  examples: [
    { name: 'no isolator', change: (job) => job, finds: [] },
    { name: 'taken on the battery side', change: isolated('battery'), finds: [] },
    {
      name: 'taken on the switched side',
      change: isolated('switched'),
      finds: [
        {
          at: 'supply',
          severity: 'advise',
          what: 'P1 is on the switched side of the battery isolator: the device is off whenever the isolator is open.',
          whatToDo: 'Tell the customer, or take the supply from the battery side, with its fuse at the tap.',
        },
      ],
    },
    {
      name: 'live with the isolator open: the battery side',
      change: (job) => {
        const open = isolated(null)(job);
        return {
          ...open,
          probePoints: (open.probePoints ?? []).map((point) =>
            point.name === 'P1'
              ? {
                  ...point,
                  readings: [
                    ...(point.readings ?? []),
                    { key: 'out' as const, volts: 12.55, secondsWaited: 720, isolator: 'open' as const },
                  ],
                }
              : point,
          ),
        };
      },
      finds: [],
    },
    {
      name: 'side not recorded',
      change: isolated(null),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The vehicle has a battery isolator, and the side on which the supply was taken is not recorded.',
          whatToDo: 'Open the isolator and read the wire again: live means battery side. Record the side.',
        },
      ],
    },
  ],
});
