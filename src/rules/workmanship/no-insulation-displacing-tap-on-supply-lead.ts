import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'No tap that bites through the insulation stands on a lead of the device.',
  why: 'The blade holds a few strands under spring force; heat and vibration loosen it, and a voltage-sensitive device then restarts or reports false trips.',
  says: {
    'joined so': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The ${voice.lead(joint.lead)} lead is joined by an insulation-displacing tap.`,
      whatToDo: 'Remove it, repair the vehicle wire, and join by a wrapped, soldered or crimped tap.',
    }),
  },
};

/** No tap that bites through the insulation stands on a lead of the device. */
export const noInsulationDisplacingTapOnSupplyLead = defineRule({
  id: 'no-insulation-displacing-tap-on-supply-lead',
  group: 'workmanship',
  severity: 'reason',
  source:
    'common practice, no source; published trade advice for trucks says the same, no regulation forbids such taps (13 CCR 1249 asks for a joint sound mechanically and electrically)',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.method === 'insulation-displacing tap')
      .map(({ lead }) => ({
        at: lead,
        says: 'joined so',
        figures: { lead },
        ...(lead === 'supply' ? {} : { severity: 'advise' }),
      })),
  examples: [
    { name: 'wrapped tap on the supply lead', change: withConnection('supply', { method: 'wrapped tap' }), finds: [] },
    {
      name: 'insulation-displacing tap on the supply lead',
      change: withConnection('supply', { method: 'insulation-displacing tap' }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The supply lead is joined by an insulation-displacing tap.',
          whatToDo: 'Remove it, repair the vehicle wire, and join by a wrapped, soldered or crimped tap.',
        },
      ],
    },
  ],
});
