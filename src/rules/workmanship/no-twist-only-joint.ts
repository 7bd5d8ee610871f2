import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'No joint is held by twisting alone.',
  why: 'A twist alone works loose; its resistance rises until the lead drops out or heats.',
  says: {
    'only twisted': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The ${voice.lead(joint.lead)} lead is only twisted to the vehicle wire.`,
      whatToDo: 'Make the joint again: pass through and wrap, solder, or crimp; then cover it and tie it.',
    }),
  },
};

/** No joint is held by twisting alone. */
export const noTwistOnlyJoint = defineRule({
  id: 'no-twist-only-joint',
  group: 'workmanship',
  severity: 'reason',
  source: '13 CCR 1249 (joints fastened mechanically and electrically, and insulated)',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.method === 'twist only')
      .map(({ lead }) => ({ at: lead, says: 'only twisted', figures: { lead } })),
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
});
