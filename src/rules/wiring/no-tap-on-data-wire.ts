import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Nothing is joined to a data pair or a signal wire. */
export const noTapOnDataWire: Rule = {
  id: 'no-tap-on-data-wire',
  group: 'wiring',
  severity: 'block',
  summary: 'Nothing is joined to a data pair or a signal wire.',
  why: "A tap on a data pair or a sensor line disturbs the vehicle's own systems.",
  source: 'common practice, no source',
  check: ({ job, evidence }) =>
    (workDone(job).connections ?? [])
      .filter((made) => {
        const wire = evidence.wires.find((each) => each.point === made.point);
        const twisted = job.probePoints?.some((point) => point.name === made.point && point.twisted) ?? false;
        return (
          twisted ||
          (wire?.conclusion.kind === 'concluded' && wire.conclusion.role === 'signal') ||
          wire?.traps.some((trap) => trap.kind === 'average of a signal' || trap.kind === 'signal only') === true
        );
      })
      .map(
        (made): RuleHit => ({
          at: made.lead,
          what: `The ${made.lead} lead is joined to a data or signal wire (${made.point}).`,
          whatToDo: 'Take it off, restore the wire, and find a supply wire.',
        }),
      ),
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
};
