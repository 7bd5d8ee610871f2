import { writeGauge } from '../../electrics/smallest-conductor.ts';
import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import { exampleProfile } from '../example-profile.ts';
import { withConnection } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The thinnest conductor of the supply lead carries the device's current without growing hot. */
export const leadCarriesTheLoad: Rule = {
  id: 'lead-carries-the-load',
  group: 'wiring',
  severity: 'reason',
  summary: "The thinnest conductor of the supply lead carries the device's current without growing hot.",
  why: 'A wire that runs hot inside a bundle softens its own insulation and that of its neighbours.',
  source:
    'FAA AC 43.13-1B CHG 1, table 11-9, 105 °C wire in a bundle (aircraft practice, a strict yardstick: 33 CFR 183.425 table 5 allows 18 AWG 20 A)',
  check: ({ job, profile, book }) => {
    const lead = workDone(job).connections?.find((made) => made.lead === 'supply');
    if (lead === undefined || profile === null) return [];
    const { leadAmperesMax } = workOutElectrics(job, profile, book);
    if (leadAmperesMax !== null && profile.awakeMilliamps <= leadAmperesMax * 1000) return [];
    const own = writeGauge(profile.leadGauge);
    const used = lead.gauge === undefined ? own : `${writeGauge(lead.gauge)} and ${own}`;
    return [
      {
        at: lead.lead,
        what: `The device draws ${profile.awakeMilliamps} mA; its supply lead (${used}) ${leadAmperesMax === null ? 'is thinner than any in the table' : `carries ${leadAmperesMax * 1000} mA for long`}.`,
        whatToDo: 'Use a thicker lead, or write what the device maker says.',
      },
    ];
  },
  examples: [
    { name: '80 mA through 18 AWG', change: (job) => job, finds: [] },
    {
      name: '6 A through 18 AWG',
      change: (job) => job,
      facts: { profile: { ...exampleProfile, awakeMilliamps: 6000 } },
      finds: [],
    },
    {
      name: '5 A through 20 AWG before 18 AWG',
      change: withConnection('supply', { gauge: { awg: 20 } }),
      facts: { profile: { ...exampleProfile, awakeMilliamps: 5000 } },
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The device draws 5000 mA; its supply lead (20 AWG and 18 AWG) carries 4000 mA for long.',
          whatToDo: 'Use a thicker lead, or write what the device maker says.',
        },
      ],
    },
  ],
};
