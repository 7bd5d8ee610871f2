import type { Connection, DeviceLead, SpliceMethod } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

function sealed(made: Connection): boolean {
  if (made.covered === 'sealed sleeve') return true;
  if (made.method === 'sealed crimp splice') return made.covered !== 'not covered';
  if (made.method === 'ring terminal') return made.covered === 'heat-shrink';
  return made.method === 'connector pin' && made.covered === 'closed housing';
}

const words = {
  summary: () => 'Where water, salt or washing reaches, the joint is sealed.',
  why: 'Tape is no seal: moisture creeps along the strands and corrodes the joint open.',
  says: {
    'not sealed': (
      joint: { lead: DeviceLead; method: SpliceMethod; cover: NonNullable<Connection['covered']> | null },
      voice: Voice,
    ) => ({
      what: `The joint of the ${voice.lead(joint.lead)} lead (${joint.method}, ${joint.cover ?? 'cover not recorded'}) is in a wet place and not sealed.`,
      whatToDo: 'Use a sealed crimp splice or a sealed sleeve, or move the joint to a dry place.',
    }),
  },
};

/** Where water, salt or washing reaches, the joint is sealed. */
export const methodSuitsAWetPlace = defineRule({
  id: 'method-suits-a-wet-place',
  group: 'workmanship',
  severity: 'reason',
  source: 'common practice, no source (FAA AC 43.13-1B 11-159 allows tape only as secondary support)',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.wetPlace && !sealed(made))
      .map(({ lead, method, covered }) => ({
        at: lead,
        says: 'not sealed',
        figures: { lead, method, cover: covered ?? null },
      })),
  examples: [
    {
      name: 'sealed crimp splice in a wet place',
      change: withConnection('supply', { method: 'sealed crimp splice', covered: 'heat-shrink', wetPlace: true }),
      finds: [],
    },
    {
      name: 'taped tap in a dry place',
      change: withConnection('supply', {
        method: 'wrapped tap',
        covered: 'tape',
        tapeMillimetres: 30,
        wetPlace: false,
      }),
      finds: [],
    },
    {
      name: 'taped tap in a wet place',
      change: withConnection('supply', { method: 'wrapped tap', covered: 'tape', tapeMillimetres: 30, wetPlace: true }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The joint of the supply lead (wrapped tap, tape) is in a wet place and not sealed.',
          whatToDo: 'Use a sealed crimp splice or a sealed sleeve, or move the joint to a dry place.',
        },
      ],
    },
  ],
});
