import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import type { Gauge } from '../../records/probe-point.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => "The thinnest conductor of the supply lead carries the device's current without growing hot.",
  why: 'A wire that runs hot inside a bundle softens its own insulation and that of its neighbours.',
  says: {
    'too thin for the table': (lead: { draws: number; gauges: readonly Gauge[] }, voice: Voice) => ({
      what: `The device draws ${lead.draws} mA; its supply lead (${voice.and(lead.gauges.map(voice.gauge))}) is thinner than any in the table.`,
      whatToDo: 'Use a thicker lead, or write what the device maker says.',
    }),
    'too thin': (lead: { draws: number; gauges: readonly Gauge[]; carries: number }, voice: Voice) => ({
      what: `The device draws ${lead.draws} mA; its supply lead (${voice.and(lead.gauges.map(voice.gauge))}) carries ${voice.decimal(lead.carries)} mA for long.`,
      whatToDo: 'Use a thicker lead, or write what the device maker says.',
    }),
  },
};

/** The thinnest conductor of the supply lead carries the device's current without growing hot. */
export const leadCarriesTheLoad = defineRule({
  id: 'lead-carries-the-load',
  group: 'wiring',
  severity: 'reason',
  source:
    'FAA AC 43.13-1B CHG 1, table 11-9, 105 °C wire in a bundle (aircraft practice, a strict yardstick: 33 CFR 183.425 table 5 allows 18 AWG 20 A)',
  words,
  check: ({ job, profile, book }) => {
    const made = workDone(job).connections?.find((each) => each.lead === 'supply');
    if (made === undefined || profile === null) return [];
    const { leadAmperesMax } = workOutElectrics(job, profile, book);
    const draws = profile.awakeMilliamps;
    const gauges = [...(made.gauge === undefined ? [] : [made.gauge]), profile.leadGauge];
    if (leadAmperesMax === null) return [{ at: made.lead, says: 'too thin for the table', figures: { draws, gauges } }];
    const carries = leadAmperesMax * 1000;
    return draws <= carries ? [] : [{ at: made.lead, says: 'too thin', figures: { draws, gauges, carries } }];
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
    {
      name: 'a lead thinner than any in the table',
      change: withConnection('supply', { gauge: { awg: 26 } }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The device draws 80 mA; its supply lead (26 AWG and 18 AWG) is thinner than any in the table.',
          whatToDo: 'Use a thicker lead, or write what the device maker says.',
        },
      ],
    },
  ],
});
