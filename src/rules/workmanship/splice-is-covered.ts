import type { DeviceLead, SpliceMethod } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';
import { tapeMillimetresMin } from './tape-is-long-enough.ts';

/** Joints made on a bared wire, which need a cover of their own. */
const splices: readonly SpliceMethod[] = [
  'wrapped tap',
  'soldered tap',
  'crimped butt splice',
  'sealed crimp splice',
  'twist only',
];

const words = {
  summary: () => 'Every joint is covered by tape, sleeve or a closed housing.',
  why: 'A bare joint under the dash touches metal sooner or later: the fuse blows, or the vehicle wire shorts where nothing protects it.',
  says: {
    bare: (joint: { lead: DeviceLead; least: number }, voice: Voice) => ({
      what: `The joint of the ${voice.lead(joint.lead)} lead is bare.`,
      whatToDo: `Cover it with ${joint.least} mm of tape or more, or with heat-shrink, and tie it.`,
    }),
    'not recorded': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `How the joint of the ${voice.lead(joint.lead)} lead is covered is not recorded.`,
      whatToDo: 'Look at the joint and record its cover.',
    }),
  },
};

/** Every joint is covered by tape, sleeve or a closed housing. */
export const spliceIsCovered = defineRule({
  id: 'splice-is-covered',
  group: 'workmanship',
  severity: 'reason',
  source: '13 CCR 1249 (joints insulated); block on live leads: common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? []).flatMap(({ lead, method, covered }): readonly Hit<typeof words>[] => {
      if (covered === 'not covered') {
        const live = lead !== 'ground';
        if (!live && method === 'ring terminal') return [];
        const figures = { lead, least: tapeMillimetresMin };
        return [{ at: lead, says: 'bare', figures, ...(live ? { severity: 'block' } : {}) }];
      }
      if (covered !== undefined || !splices.includes(method)) return [];
      return [{ at: lead, says: 'not recorded', figures: { lead } }];
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
});
