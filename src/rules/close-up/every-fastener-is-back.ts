import { defineRule } from '../define-rule.ts';
import type { Hit } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Every fastener that came out is back in its own hole.',
  why: 'A missing screw rattles, and the customer finds it.',
  says: {
    'not counted back': (panel: { name: string; fastener: string; out: number }) => ({
      what: `${panel.out} of ${panel.fastener} came out of the ${panel.name}; how many went back is not recorded.`,
      whatToDo: 'Count them back in and record the number.',
    }),
    'too many': (panel: { name: string; fastener: string; out: number; back: number }) => ({
      what: `${panel.out} of ${panel.fastener} came out of the ${panel.name}, ${panel.back} went in.`,
      whatToDo: 'Count again; say in the notes where the others came from.',
    }),
    'too few': (panel: { name: string; fastener: string; out: number; back: number }) => ({
      what: `${panel.out} of ${panel.fastener} came out of the ${panel.name}, ${panel.back} went back.`,
      whatToDo: 'Find or replace the missing ones.',
    }),
  },
};

/** Every fastener that came out is back in its own hole. */
export const everyFastenerIsBack = defineRule({
  id: 'every-fastener-is-back',
  group: 'close-up',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).panels ?? []).flatMap(({ name, fastener, out, in: back }): readonly Hit<typeof words>[] => {
      if (back === out) return [];
      if (back === undefined) return [{ at: name, says: 'not counted back', figures: { name, fastener, out } }];
      const figures = { name, fastener, out, back };
      return back > out
        ? [{ at: name, says: 'too many', figures, severity: 'advise' }]
        : [{ at: name, says: 'too few', figures }];
    }),
  examples: [
    {
      name: 'four out, four in',
      change: (job) => ({ ...job, panels: [{ name: 'knee panel', fastener: 'trim screw', out: 4, in: 4 }] }),
      finds: [],
    },
    {
      name: 'four out, three in',
      change: (job) => ({ ...job, panels: [{ name: 'knee panel', fastener: 'trim screw', out: 4, in: 3 }] }),
      finds: [
        {
          at: 'knee panel',
          severity: 'reason',
          what: '4 of trim screw came out of the knee panel, 3 went back.',
          whatToDo: 'Find or replace the missing ones.',
        },
      ],
    },
    {
      name: 'not counted back',
      change: (job) => ({ ...job, panels: [{ name: 'knee panel', fastener: 'trim screw', out: 4 }] }),
      finds: [
        {
          at: 'knee panel',
          severity: 'reason',
          what: '4 of trim screw came out of the knee panel; how many went back is not recorded.',
          whatToDo: 'Count them back in and record the number.',
        },
      ],
    },
    {
      name: 'four out, five in',
      change: (job) => ({ ...job, panels: [{ name: 'knee panel', fastener: 'trim screw', out: 4, in: 5 }] }),
      finds: [
        {
          at: 'knee panel',
          severity: 'advise',
          what: '4 of trim screw came out of the knee panel, 5 went in.',
          whatToDo: 'Count again; say in the notes where the others came from.',
        },
      ],
    },
  ],
});
