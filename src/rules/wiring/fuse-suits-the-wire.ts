import { assessFuse } from '../../electrics/assess-fuse.ts';
import { writeGauge } from '../../electrics/smallest-conductor.ts';
import { withConnection } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

const fuse = (ratingAmperes: number) => ({ ratingAmperes, distanceMillimetres: 90, tapedAndTied: true });

/** A fuse is no larger than the smallest wire behind it allows and the device needs. */
export const fuseSuitsTheWire: Rule = {
  id: 'fuse-suits-the-wire',
  group: 'wiring',
  severity: 'block',
  summary: 'A fuse is no larger than the smallest wire behind it allows and the device needs.',
  why: 'The fuse protects the wire: too large a fuse lets the wire burn first.',
  source:
    "FAA AC 43.13-1B, 11-48 and table 11-3 (fuse column; aircraft practice, a strict yardstick: NEC 240.4(D) allows 7 A (from memory), 33 CFR 183.455 30 A on 18 AWG); the device maker's data",
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      if (made.fuse === undefined) return [];
      const rating = made.fuse.ratingAmperes;
      const judged = assessFuse(rating, [made.gauge, profile?.leadGauge], null, null);
      if (judged.smallestConductor === null) return [];
      const wire = writeGauge(judged.smallestConductor);
      if (judged.suitsTheWire === false)
        return [
          {
            at: made.lead,
            what:
              judged.wireAmperesMax === null
                ? `A ${rating} A fuse protects the ${made.lead} lead, whose smallest wire (${wire}) is thinner than any in the table.`
                : `A ${rating} A fuse protects the ${made.lead} lead, whose smallest wire (${wire}) allows ${judged.wireAmperesMax} A at most.`,
            whatToDo: 'Fit the fuse the device maker names.',
          },
        ];
      if (profile !== null && rating > profile.fuseAmperes)
        return [
          {
            at: made.lead,
            what: `A ${rating} A fuse is fitted, the maker names ${profile.fuseAmperes} A.`,
            whatToDo: `Fit ${profile.fuseAmperes} A.`,
          },
        ];
      return [];
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
      name: '3 A in a 24 AWG lead, thinner than the table',
      change: withConnection('ignition', { gauge: { awg: 24 }, fuse: fuse(3) }),
      finds: [
        {
          at: 'ignition',
          severity: 'block',
          what: 'A 3 A fuse protects the ignition lead, whose smallest wire (24 AWG) is thinner than any in the table.',
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
};
