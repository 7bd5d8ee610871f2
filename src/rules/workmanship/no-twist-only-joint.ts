import { withConnection } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** No joint is held by twisting alone. */
export const noTwistOnlyJoint: Rule = {
  id: 'no-twist-only-joint',
  group: 'workmanship',
  severity: 'reason',
  summary: 'No joint is held by twisting alone.',
  why: 'A twist alone works loose; its resistance rises until the lead drops out or heats.',
  source: '13 CCR 1249 (joints fastened mechanically and electrically, and insulated)',
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.method === 'twist only')
      .map((made) => ({
        at: made.lead,
        what: `The ${made.lead} lead is only twisted to the vehicle wire.`,
        whatToDo: 'Make the joint again: pass through and wrap, solder, or crimp; then cover it and tie it.',
      })),
  examples: [
    { name: 'soldered tap', change: withConnection('ignition', { method: 'soldered tap' }), finds: [] },
    {
      name: 'twisted ignition lead',
      change: withConnection('ignition', { method: 'twist only' }),
      finds: [
        {
          at: 'ignition',
          severity: 'reason',
          what: 'The ignition lead is only twisted to the vehicle wire.',
          whatToDo: 'Make the joint again: pass through and wrap, solder, or crimp; then cover it and tie it.',
        },
      ],
    },
  ],
};
