import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

/** Used where the profile names no distance (common practice, no source). */
export const heatMillimetresMin = 100;

const words = {
  summary: () =>
    `The device keeps its distance from heater ducts, exhaust and other hot parts (${heatMillimetresMin} mm, or what its profile says).`,
  why: 'Beside a duct or a pipe it is hotter than the place as a whole, and adhesive and ties let go.',
  says: {
    'too near': (heat: { distance: number; least: number }) => ({
      what: `The device sits ${heat.distance} mm from a hot part; ${heat.least} mm at least.`,
      whatToDo: 'Move it away, or put a shield between and write what it is.',
    }),
  },
};

/** The device keeps its distance from heater ducts, exhaust and other hot parts. */
export const awayFromHeatSources = defineRule({
  id: 'away-from-heat-sources',
  group: 'placement',
  severity: 'reason',
  source: "the device's own profile; 100 mm: common practice, no source",
  words,
  check: ({ job, profile }) => {
    const distance = workDone(job).placement?.heatMillimetres;
    const least = profile?.heatMillimetresMin ?? heatMillimetresMin;
    if (distance === undefined || distance >= least) return [];
    return [{ at: 'device', says: 'too near', figures: { distance, least } }];
  },
  examples: [
    { name: '100 mm', change: withPlacement({ heatMillimetres: 100 }), finds: [] },
    {
      name: '99 mm',
      change: withPlacement({ heatMillimetres: 99 }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device sits 99 mm from a hot part; 100 mm at least.',
          whatToDo: 'Move it away, or put a shield between and write what it is.',
        },
      ],
    },
    {
      name: '120 mm, where the profile asks for 150 mm',
      change: withPlacement({ heatMillimetres: 120 }),
      facts: { profile: { ...exampleProfile, heatMillimetresMin: 150 } },
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device sits 120 mm from a hot part; 150 mm at least.',
          whatToDo: 'Move it away, or put a shield between and write what it is.',
        },
      ],
    },
  ],
});
