import { assessFuse } from '../../electrics/assess-fuse.ts';
import { exampleProfile } from '../example-profile.ts';
import { withConnection } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device draws at most 80 % of its fuse for long. */
export const fuseBearsTheLoad: Rule = {
  id: 'fuse-bears-the-load',
  group: 'wiring',
  severity: 'reason',
  summary: 'The device draws at most 80 % of its fuse for long.',
  why: 'A fuse near its rating grows warm, ages and opens on a hot day without any fault.',
  source: 'NFPA 70 (NEC) 210.20(A), 125 % of a continuous load (from memory; building practice used as a yardstick)',
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      if (made.lead !== 'supply' || made.fuse === undefined || profile === null) return [];
      const judged = assessFuse(made.fuse.ratingAmperes, [], profile.awakeMilliamps, null);
      if (judged.bearsTheLoad !== false) return [];
      return [
        {
          at: made.lead,
          what: `The device draws ${profile.awakeMilliamps} mA; a fuse of ${made.fuse.ratingAmperes} A carries ${made.fuse.ratingAmperes * 800} mA for long.`,
          whatToDo: `Fit the fuse the device maker names (${profile.fuseAmperes} A), if the wire allows it.`,
        },
      ];
    }),
  examples: [
    { name: '80 mA on a fuse of 3 A', change: (job) => job, finds: [] },
    {
      name: '2.4 A on a fuse of 3 A',
      change: (job) => job,
      facts: { profile: { ...exampleProfile, awakeMilliamps: 2400 } },
      finds: [],
    },
    {
      name: '0.5 A on a fuse of 0.5 A',
      change: withConnection('supply', { fuse: { ratingAmperes: 0.5, distanceMillimetres: 90, tapedAndTied: true } }),
      facts: { profile: { ...exampleProfile, awakeMilliamps: 500 } },
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The device draws 500 mA; a fuse of 0.5 A carries 400 mA for long.',
          whatToDo: 'Fit the fuse the device maker names (3 A), if the wire allows it.',
        },
      ],
    },
  ],
};
