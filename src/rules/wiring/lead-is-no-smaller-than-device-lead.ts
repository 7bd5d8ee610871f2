import { isSmaller, writeGauge } from '../../electrics/smallest-conductor.ts';
import { withConnection } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** A lead that lengthens or replaces the device's own is no thinner than it. */
export const leadIsNoSmallerThanDeviceLead: Rule = {
  id: 'lead-is-no-smaller-than-device-lead',
  group: 'wiring',
  severity: 'reason',
  summary: "A lead that lengthens or replaces the device's own is no thinner than it.",
  why: "The maker chose its lead for current, fuse and pull; a thinner piece is the new weakest place, and the device's fuse may not protect it.",
  source:
    "the device maker's data, in devices.json; AWG sizes: ASTM B258; smallest conductor decides: FAA AC 43.13-1B 11-48",
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      if (made.gauge === undefined || profile === null || !isSmaller(made.gauge, profile.leadGauge)) return [];
      return [
        {
          at: made.lead,
          what: `The ${made.lead} lead is ${writeGauge(made.gauge)}; the device's own is ${writeGauge(profile.leadGauge)}.`,
          whatToDo: `Use ${writeGauge(profile.leadGauge)} or thicker, or write why this one is enough.`,
        },
      ];
    }),
  examples: [
    { name: "the device's own lead", change: (job) => job, finds: [] },
    { name: '16 AWG added to 18 AWG', change: withConnection('supply', { gauge: { awg: 16 } }), finds: [] },
    {
      name: '0.75 mm² added to 18 AWG, its neighbour in the metric row',
      change: withConnection('supply', { gauge: { squareMillimetres: 0.75 } }),
      finds: [],
    },
    {
      name: '20 AWG added to 18 AWG',
      change: withConnection('supply', { gauge: { awg: 20 } }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: "The supply lead is 20 AWG; the device's own is 18 AWG.",
          whatToDo: 'Use 18 AWG or thicker, or write why this one is enough.',
        },
      ],
    },
    {
      name: '0.5 mm² added to 18 AWG',
      change: withConnection('ground', { gauge: { squareMillimetres: 0.5 } }),
      finds: [
        {
          at: 'ground',
          severity: 'reason',
          what: "The ground lead is 0.5 mm²; the device's own is 18 AWG.",
          whatToDo: 'Use 18 AWG or thicker, or write why this one is enough.',
        },
      ],
    },
  ],
};
