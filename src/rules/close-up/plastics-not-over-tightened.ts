import { defineRule } from '../define-rule.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Trim fasteners are tightened by hand or by torque, not by power tool.',
  why: 'A power tool strips the plastic; the screw then holds nothing.',
  says: {
    'by power tool': (panel: { name: string; fastener: string }) => ({
      what: `The ${panel.fastener} of the ${panel.name} was tightened by power tool.`,
      whatToDo: 'Check that each still bites; tighten trim by hand, snug only.',
    }),
  },
};

/** Trim fasteners are tightened by hand or by torque, not by power tool. */
export const plasticsNotOverTightened = defineRule({
  id: 'plastics-not-over-tightened',
  group: 'close-up',
  severity: 'advise',
  source: 'common practice, no source (no universal torque for plastics is published)',
  words,
  check: ({ job }) =>
    (workDone(job).panels ?? [])
      .filter((panel) => panel.tightened === 'by power tool')
      .map(({ name, fastener }) => ({ at: name, says: 'by power tool', figures: { name, fastener } })),
  examples: [
    {
      name: 'hand-snug',
      change: (job) => ({
        ...job,
        panels: [{ name: 'knee panel', fastener: 'trim screw', out: 4, in: 4, tightened: 'by hand' }],
      }),
      finds: [],
    },
    {
      name: 'power tool',
      change: (job) => ({
        ...job,
        panels: [{ name: 'knee panel', fastener: 'trim screw', out: 4, in: 4, tightened: 'by power tool' }],
      }),
      finds: [
        {
          at: 'knee panel',
          severity: 'advise',
          what: 'The trim screw of the knee panel was tightened by power tool.',
          whatToDo: 'Check that each still bites; tighten trim by hand, snug only.',
        },
      ],
    },
  ],
});
