import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Nothing is joined to a data pair or a signal wire.',
  why: "A tap on a data pair or a sensor line disturbs the vehicle's own systems.",
  says: {
    'joined to it': (joint: { lead: DeviceLead; point: string }, voice: Voice) => ({
      what: `The ${voice.lead(joint.lead)} lead is joined to a data or signal wire (${joint.point}).`,
      whatToDo: 'Take it off, restore the wire, and find a supply wire.',
    }),
  },
};

/** Nothing is joined to a data pair or a signal wire. */
export const noTapOnDataWire = defineRule({
  id: 'no-tap-on-data-wire',
  group: 'wiring',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job, evidence }) =>
    (workDone(job).connections ?? []).flatMap(({ lead, point }) => {
      const wire = evidence.wires.find((each) => each.point === point);
      const twisted = job.probePoints?.some((each) => each.name === point && each.twisted) ?? false;
      const isSignal =
        twisted ||
        (wire?.conclusion.kind === 'concluded' && wire.conclusion.role === 'signal') ||
        wire?.traps.some((trap) => trap.kind === 'average of a signal' || trap.kind === 'signal only') === true;
      return isSignal && point !== undefined ? [{ at: lead, says: 'joined to it', figures: { lead, point } }] : [];
    }),
  examples: [
    { name: 'plain wires', change: (job) => job, finds: [] },
    {
      name: 'one of a twisted pair',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P2' ? { ...point, twisted: true } : point,
        ),
      }),
      finds: [
        {
          at: 'ignition',
          severity: 'block',
          what: 'The ignition lead is joined to a data or signal wire (P2).',
          whatToDo: 'Take it off, restore the wire, and find a supply wire.',
        },
      ],
    },
  ],
});
