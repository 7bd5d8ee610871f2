import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** A transmitting device is at least 200 mm from people, or as far as its profile says. */
export const distanceFromPeople: Rule = {
  id: 'distance-from-people',
  group: 'placement',
  severity: 'reason',
  summary: 'A transmitting device is at least 200 mm from people, or as far as its profile says.',
  why: 'Its radio approval rests on that distance.',
  source: '47 CFR 2.1091(b) (20 cm, mobile devices)',
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement === undefined || profile === null || !profile.transmits) return [];
    const far = placement.personMillimetres;
    const least = profile.personMillimetresMin;
    if (far === undefined) {
      return [
        {
          at: 'device',
          what: `The distance of the device from people is not recorded; ${least} mm or more is wanted.`,
          whatToDo: 'Measure to the nearest place where a person sits or stands.',
          severity: 'advise',
        },
      ];
    }
    if (far >= least) return [];
    return [
      {
        at: 'device',
        what: `The device is ${far} mm from people; ${least} mm or more is wanted.`,
        whatToDo: `Move it to at least ${least} mm from any seat.`,
      },
    ];
  },
  examples: [
    { name: 'a metre away', change: withPlacement({ personMillimetres: 1000 }), finds: [] },
    {
      name: '150 mm away',
      change: withPlacement({ personMillimetres: 150 }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device is 150 mm from people; 200 mm or more is wanted.',
          whatToDo: 'Move it to at least 200 mm from any seat.',
        },
      ],
    },
  ],
};
