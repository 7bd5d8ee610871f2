import { fuseAmperesMax } from '../electrics/wire-fuse-limit.ts';
import type { Rule, RuleHit } from './rule.ts';
import { workDone } from './work-done.ts';

/** A fuse is no larger than its wire allows and the device needs. */
export const fuseSuitsTheWire: Rule = {
  id: 'fuse-suits-the-wire',
  group: 'wiring',
  severity: 'block',
  summary: 'A fuse is no larger than its wire allows and the device needs.',
  why: 'The fuse protects the wire: too large a fuse lets the wire burn first.',
  source: "FAA AC 43.13-1B, table 11-3 (aircraft practice, a strict yardstick); the device maker's data",
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      const gauge = made.gauge ?? profile?.leadGauge;
      if (made.fuse === undefined || gauge === undefined) return [];
      const wireMax = fuseAmperesMax(gauge);
      const rating = made.fuse.ratingAmperes;
      if (wireMax === null || rating > wireMax)
        return [
          {
            at: made.lead,
            what: `A ${rating} A fuse protects the ${made.lead} lead, whose wire allows ${wireMax ?? 'none of the ratings listed'}${wireMax === null ? '' : ' A at most'}.`,
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
      change: (job) => ({
        ...job,
        connections: (job.connections ?? []).map((made) =>
          made.lead === 'supply' ? { ...made, fuse: { ratingAmperes: 15, distanceMillimetres: 90 } } : made,
        ),
      }),
      finds: ['supply'],
    },
  ],
};
