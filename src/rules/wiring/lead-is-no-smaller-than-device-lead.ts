import { isSmaller } from '../../electrics/smallest-conductor.ts';
import type { DeviceLead } from '../../records/connection.ts';
import type { Gauge } from '../../records/probe-point.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => "A lead that lengthens or replaces the device's own is no thinner than it.",
  why: "The maker chose its lead for current, fuse and pull; a thinner piece is the new weakest place, and the device's fuse may not protect it.",
  says: {
    thinner: (joint: { lead: DeviceLead; used: Gauge; own: Gauge }, voice: Voice) => ({
      what: `The ${voice.lead(joint.lead)} lead is ${voice.gauge(joint.used)}; the device's own is ${voice.gauge(joint.own)}.`,
      whatToDo: `Use ${voice.gauge(joint.own)} or thicker, or write why this one is enough.`,
    }),
  },
};

/** A lead that lengthens or replaces the device's own is no thinner than it. */
export const leadIsNoSmallerThanDeviceLead = defineRule({
  id: 'lead-is-no-smaller-than-device-lead',
  group: 'wiring',
  severity: 'reason',
  source:
    "the device maker's data, in devices.json; AWG sizes: ASTM B258; smallest conductor decides: FAA AC 43.13-1B 11-48",
  words,
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap(({ lead, gauge: used }) =>
      used === undefined || profile === null || !isSmaller(used, profile.leadGauge)
        ? []
        : [{ at: lead, says: 'thinner', figures: { lead, used, own: profile.leadGauge } }],
    ),
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
});
