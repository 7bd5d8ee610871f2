import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Every fastener that came out is back in its own hole. */
export const everyFastenerIsBack: Rule = {
  id: 'every-fastener-is-back',
  group: 'close-up',
  severity: 'reason',
  summary: 'Every fastener that came out is back in its own hole.',
  why: 'A missing screw rattles, and the customer finds it.',
  source: 'common practice, no source',
  check: ({ job }) =>
    (workDone(job).panels ?? []).flatMap((panel): readonly RuleHit[] => {
      if (panel.in === panel.out) return [];
      if (panel.in === undefined) {
        return [
          {
            at: panel.name,
            what: `${panel.out} of ${panel.fastener} came out of the ${panel.name}; how many went back is not recorded.`,
            whatToDo: 'Count them back in and record the number.',
          },
        ];
      }
      if (panel.in > panel.out) {
        return [
          {
            at: panel.name,
            what: `${panel.out} of ${panel.fastener} came out of the ${panel.name}, ${panel.in} went in.`,
            whatToDo: 'Count again; say in the notes where the others came from.',
            severity: 'advise',
          },
        ];
      }
      return [
        {
          at: panel.name,
          what: `${panel.out} of ${panel.fastener} came out of the ${panel.name}, ${panel.in} went back.`,
          whatToDo: 'Find or replace the missing ones.',
        },
      ];
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
};
