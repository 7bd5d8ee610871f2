import { assessFuse, loadOfFusePercentMax } from '../../electrics/assess-fuse.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => `The device draws at most ${loadOfFusePercentMax} % of its fuse for long.`,
  why: 'A fuse near its rating grows warm, ages and opens on a hot day without any fault.',
  says: {
    'too small': (fuse: { draws: number; rating: number; carries: number; named: number }, voice: Voice) => ({
      what: `The device draws ${fuse.draws} mA; a fuse of ${voice.decimal(fuse.rating)} A carries ${voice.decimal(fuse.carries)} mA for long.`,
      whatToDo: `Fit the fuse the device maker names (${voice.decimal(fuse.named)} A), if the wire allows it.`,
    }),
  },
};

/** The device draws at most 80 % of its fuse for long. */
export const fuseBearsTheLoad = defineRule({
  id: 'fuse-bears-the-load',
  group: 'wiring',
  severity: 'reason',
  source: 'NFPA 70 (NEC) 210.20(A), 125 % of a continuous load (from memory; building practice used as a yardstick)',
  words,
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap(({ lead, fuse }) => {
      if (lead !== 'supply' || fuse === undefined || profile === null) return [];
      const rating = fuse.ratingAmperes;
      const draws = profile.awakeMilliamps;
      if (assessFuse(rating, [], draws, null).bearsTheLoad !== false) return [];
      const carries = rating * 10 * loadOfFusePercentMax;
      return [{ at: lead, says: 'too small', figures: { draws, rating, carries, named: profile.fuseAmperes } }];
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
});
