import { nickedStrandsMax } from '../nicked-strands-max.ts';
import { withConnection } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Stripping cuts no strand and nicks no more than the table allows. */
export const strandsAreNotCut: Rule = {
  id: 'strands-are-not-cut',
  group: 'workmanship',
  severity: 'reason',
  summary: 'Stripping cuts no strand and nicks no more than the table allows.',
  why: 'Cut strands take away cross-section and strength at the very place that bends most.',
  source:
    'FAA AC 43.13-1B table 11-13 (copper: 24-14 AWG 2 nicked, 12-10 AWG 4, 8-4 AWG 6; none cut up to 10 AWG); aircraft practice, a strict yardstick',
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      if (made.stripped === 'strands cut') {
        return [
          {
            at: made.lead,
            what: `Strands were cut in stripping for the ${made.lead} lead; none may be.`,
            whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
          },
        ];
      }
      if (made.stripped !== 'strands nicked') return [];
      const allowed = nickedStrandsMax(made.gauge ?? profile?.leadGauge);
      if (made.nickedStrands === undefined) {
        return [
          {
            at: made.lead,
            what: `Strands were nicked in stripping for the ${made.lead} lead, but not counted; ${allowed} are allowed.`,
            whatToDo: 'Count the nicked strands and record them.',
          },
        ];
      }
      if (made.nickedStrands <= allowed) return [];
      return [
        {
          at: made.lead,
          what: `${made.nickedStrands} strands were nicked in stripping for the ${made.lead} lead; ${allowed} are allowed.`,
          whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
        },
      ];
    }),
  examples: [
    {
      name: 'two strands nicked in 18 AWG',
      change: withConnection('supply', { gauge: { awg: 18 }, stripped: 'strands nicked', nickedStrands: 2 }),
      finds: [],
    },
    {
      name: 'three strands nicked in 18 AWG',
      change: withConnection('supply', { gauge: { awg: 18 }, stripped: 'strands nicked', nickedStrands: 3 }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: '3 strands were nicked in stripping for the supply lead; 2 are allowed.',
          whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
        },
      ],
    },
    {
      name: 'strands cut',
      change: withConnection('ignition', { stripped: 'strands cut' }),
      finds: [
        {
          at: 'ignition',
          severity: 'reason',
          what: 'Strands were cut in stripping for the ignition lead; none may be.',
          whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
        },
      ],
    },
  ],
};
