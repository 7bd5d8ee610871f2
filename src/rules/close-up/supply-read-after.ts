import { defineRule } from '../define-rule.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The supply is read again after the work.',
  why: 'Only a reading after the work shows that it left the vehicle as it was.',
  says: {
    'not read': () => ({
      what: 'No supply reading was taken after the work.',
      whatToDo: 'Read the battery or the supply wire with the engine running (ready), and record it.',
    }),
  },
};

/** The supply is read again after the work. */
export const supplyReadAfter = defineRule({
  id: 'supply-read-after',
  group: 'close-up',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { connections, supply, after } = workDone(job);
    if (connections === undefined || connections.length === 0 || job.identity.visit === 'removal') return [];
    if (after?.restVolts !== undefined || after?.chargingVolts !== undefined) return [];
    if ((supply ?? []).some((reading) => reading.taken === 'after')) return [];
    const points = new Set(connections.filter((made) => made.lead === 'supply').map((made) => made.point));
    const read = (job.probePoints ?? []).filter((point) => points.has(point.name));
    if (read.some((point) => point.readings.some((reading) => reading.taken === 'after'))) return [];
    return [{ at: 'supply', says: 'not read' }];
  },
  examples: [
    {
      name: 'charging volts after',
      change: (job) => ({ ...job, after: { ...job.after, chargingVolts: 14.1 } }),
      finds: [],
    },
    {
      name: 'nothing read after',
      change: (job) => ({ ...job, after: {}, supply: [{ key: 'out', volts: 12.6 }], probePoints: [] }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'No supply reading was taken after the work.',
          whatToDo: 'Read the battery or the supply wire with the engine running (ready), and record it.',
        },
      ],
    },
  ],
});
