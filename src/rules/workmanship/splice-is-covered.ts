import type { SpliceMethod } from '../../records/connection.ts';
import { withConnection } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Joints made on a bared wire, which need a cover of their own. */
const splices: readonly SpliceMethod[] = [
  'wrapped tap',
  'soldered tap',
  'crimped butt splice',
  'sealed crimp splice',
  'twist only',
];

/** Every joint is covered by tape, sleeve or a closed housing. */
export const spliceIsCovered: Rule = {
  id: 'splice-is-covered',
  group: 'workmanship',
  severity: 'reason',
  summary: 'Every joint is covered by tape, sleeve or a closed housing.',
  why: 'A bare joint under the dash touches metal sooner or later: the fuse blows, or the vehicle wire shorts where nothing protects it.',
  source: '13 CCR 1249 (joints insulated); block on live leads: common practice, no source',
  check: ({ job }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      if (made.covered === 'not covered') {
        const live = made.lead !== 'ground';
        if (!live && made.method === 'ring terminal') return [];
        return [
          {
            at: made.lead,
            what: `The joint of the ${made.lead} lead is bare.`,
            whatToDo: 'Cover it with 25 mm of tape or more, or with heat-shrink, and tie it.',
            ...(live ? { severity: 'block' as const } : {}),
          },
        ];
      }
      if (made.covered !== undefined || !splices.includes(made.method)) return [];
      return [
        {
          at: made.lead,
          what: `How the joint of the ${made.lead} lead is covered is not recorded.`,
          whatToDo: 'Look at the joint and record its cover.',
        },
      ];
    }),
  examples: [
    { name: 'joint in heat-shrink', change: withConnection('supply', { covered: 'heat-shrink' }), finds: [] },
    {
      name: 'bare joint on the supply lead',
      change: withConnection('supply', { covered: 'not covered' }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The joint of the supply lead is bare.',
          whatToDo: 'Cover it with 25 mm of tape or more, or with heat-shrink, and tie it.',
        },
      ],
    },
    {
      name: 'bare ring on a ground stud',
      change: withConnection('ground', { method: 'ring terminal', covered: 'not covered' }),
      finds: [],
    },
    {
      name: 'cover of the ignition joint not recorded',
      change: withConnection('ignition', { method: 'wrapped tap', covered: undefined }),
      finds: [
        {
          at: 'ignition',
          severity: 'reason',
          what: 'How the joint of the ignition lead is covered is not recorded.',
          whatToDo: 'Look at the joint and record its cover.',
        },
      ],
    },
  ],
};
