import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

/** 47 CFR 2.1091(b): 20 cm. */
export const personMillimetresUsual = 200;

const words = {
  summary: () =>
    `A transmitting device is at least ${personMillimetresUsual} mm from people, or as far as its profile says.`,
  why: 'Its radio approval rests on that distance.',
  says: {
    'not recorded': (people: { least: number }) => ({
      what: `The distance of the device from people is not recorded; ${people.least} mm or more is wanted.`,
      whatToDo: 'Measure to the nearest place where a person sits or stands.',
    }),
    'too near': (people: { distance: number; least: number }) => ({
      what: `The device is ${people.distance} mm from people; ${people.least} mm or more is wanted.`,
      whatToDo: `Move it to at least ${people.least} mm from any seat.`,
    }),
  },
};

/** A transmitting device is at least 200 mm from people, or as far as its profile says. */
export const distanceFromPeople = defineRule({
  id: 'distance-from-people',
  group: 'placement',
  severity: 'reason',
  source: '47 CFR 2.1091(b) (20 cm, mobile devices)',
  words,
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement === undefined || profile === null || !profile.transmits) return [];
    const distance = placement.personMillimetres;
    const least = profile.personMillimetresMin;
    if (distance === undefined) return [{ at: 'device', says: 'not recorded', figures: { least }, severity: 'advise' }];
    return distance >= least ? [] : [{ at: 'device', says: 'too near', figures: { distance, least } }];
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
    {
      name: 'a distance that was not measured',
      change: withPlacement({ personMillimetres: undefined }),
      finds: [
        {
          at: 'device',
          severity: 'advise',
          what: 'The distance of the device from people is not recorded; 200 mm or more is wanted.',
          whatToDo: 'Measure to the nearest place where a person sits or stands.',
        },
      ],
    },
  ],
});
