import { assessFuse } from '../../electrics/assess-fuse.ts';
import type { DeviceLead } from '../../records/connection.ts';
import type { Gauge } from '../../records/probe-point.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const fuse = (ratingAmperes: number) => ({ ratingAmperes, distanceMillimetres: 90, tapedAndTied: true });

const words = {
  summary: () => 'A fuse is no larger than the smallest wire behind it allows and the device needs.',
  why: 'The fuse protects the wire: too large a fuse lets the wire burn first.',
  says: {
    'wire too thin for the table': (fuse: { lead: DeviceLead; rating: number; wire: Gauge }, voice: Voice) => ({
      what: `A ${voice.decimal(fuse.rating)} A fuse protects the ${voice.lead(fuse.lead)} lead, whose smallest wire (${voice.gauge(fuse.wire)}) is thinner than any in the table.`,
      whatToDo: 'Fit the fuse the device maker names.',
    }),
    'too large for the wire': (
      fuse: { lead: DeviceLead; rating: number; wire: Gauge; most: number },
      voice: Voice,
    ) => ({
      what: `A ${voice.decimal(fuse.rating)} A fuse protects the ${voice.lead(fuse.lead)} lead, whose smallest wire (${voice.gauge(fuse.wire)}) allows ${voice.decimal(fuse.most)} A at most.`,
      whatToDo: 'Fit the fuse the device maker names.',
    }),
    'larger than named': (fuse: { rating: number; named: number }, voice: Voice) => ({
      what: `A ${voice.decimal(fuse.rating)} A fuse is fitted, the maker names ${voice.decimal(fuse.named)} A.`,
      whatToDo: `Fit ${voice.decimal(fuse.named)} A.`,
    }),
  },
};

/** A fuse is no larger than the smallest wire behind it allows and the device needs. */
export const fuseSuitsTheWire = defineRule({
  id: 'fuse-suits-the-wire',
  group: 'wiring',
  severity: 'block',
  source:
    "FAA AC 43.13-1B, 11-48 and table 11-3 (fuse column; aircraft practice, a strict yardstick: NEC 240.4(D) allows 7 A (from memory), 33 CFR 183.455 30 A on 18 AWG); the device maker's data",
  words,
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly Hit<typeof words>[] => {
      if (made.fuse === undefined) return [];
      const { lead } = made;
      const rating = made.fuse.ratingAmperes;
      const judged = assessFuse(rating, [made.gauge, profile?.leadGauge], null, null);
      const { smallestConductor: wire, wireAmperesMax: most } = judged;
      if (wire === null) return [];
      if (judged.suitsTheWire === false)
        return most === null
          ? [{ at: lead, says: 'wire too thin for the table', figures: { lead, rating, wire } }]
          : [{ at: lead, says: 'too large for the wire', figures: { lead, rating, wire, most } }];
      if (profile === null || rating <= profile.fuseAmperes) return [];
      return [{ at: lead, says: 'larger than named', figures: { rating, named: profile.fuseAmperes } }];
    }),
  examples: [
    { name: '3 A in an 18 AWG lead', change: (job) => job, finds: [] },
    {
      name: '15 A in an 18 AWG lead',
      change: withConnection('supply', { fuse: fuse(15) }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'A 15 A fuse protects the supply lead, whose smallest wire (18 AWG) allows 10 A at most.',
          whatToDo: 'Fit the fuse the device maker names.',
        },
      ],
    },
    {
      name: '15 A in a 12 AWG lead that ends in the 18 AWG of the device',
      change: withConnection('supply', { gauge: { awg: 12 }, fuse: fuse(15) }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'A 15 A fuse protects the supply lead, whose smallest wire (18 AWG) allows 10 A at most.',
          whatToDo: 'Fit the fuse the device maker names.',
        },
      ],
    },
    {
      name: '1 A in a 24 AWG lead, as makers deliver it',
      change: withConnection('ignition', { gauge: { awg: 24 }, fuse: fuse(1) }),
      finds: [],
    },
    {
      name: '1 A in a 26 AWG lead, thinner than the table',
      change: withConnection('ignition', { gauge: { awg: 26 }, fuse: fuse(1) }),
      finds: [
        {
          at: 'ignition',
          severity: 'block',
          what: 'A 1 A fuse protects the ignition lead, whose smallest wire (26 AWG) is thinner than any in the table.',
          whatToDo: 'Fit the fuse the device maker names.',
        },
      ],
    },
    {
      name: '5 A where the maker names 3 A',
      change: withConnection('supply', { fuse: fuse(5) }),
      finds: [
        { at: 'supply', severity: 'block', what: 'A 5 A fuse is fitted, the maker names 3 A.', whatToDo: 'Fit 3 A.' },
      ],
    },
  ],
});
