import { defineRule } from '../define-rule.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The supply was read again under load after connecting.',
  why: 'A corroded wire reads full volts until it carries current.',
  says: {
    'not read loaded': () => ({
      what: 'The supply wire was not read after connecting while it carried the device.',
      whatToDo: 'Read it again with the device awake and record it as loaded.',
    }),
  },
};

/** The supply was read again under load after connecting. */
export const loadedReadingTaken = defineRule({
  id: 'loaded-reading-taken',
  group: 'wiring',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter(
        (made) =>
          made.lead === 'supply' &&
          !job.probePoints?.some(
            (point) =>
              point.name === made.point && point.readings.some((each) => each.loaded && each.taken === 'after'),
          ),
      )
      .map(({ lead }) => ({ at: lead, says: 'not read loaded' })),
  examples: [
    { name: 'read with the device awake', change: (job) => job, finds: [] },
    {
      name: 'read only before connecting',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P1'
            ? { ...point, readings: (point.readings ?? []).filter((each) => each.loaded !== true) }
            : point,
        ),
      }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The supply wire was not read after connecting while it carried the device.',
          whatToDo: 'Read it again with the device awake and record it as loaded.',
        },
      ],
    },
    {
      name: 'loaded with a test lamp before connecting, not with the device after',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P1'
            ? { ...point, readings: (point.readings ?? []).map((each) => ({ ...each, taken: 'before' as const })) }
            : point,
        ),
      }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The supply wire was not read after connecting while it carried the device.',
          whatToDo: 'Read it again with the device awake and record it as loaded.',
        },
      ],
    },
  ],
});
