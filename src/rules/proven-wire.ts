import type { Evidence } from '../evidence/evidence.ts';
import type { DeviceLead } from '../records/connection.ts';
import type { Job } from '../records/job.ts';
import type { WireRole } from '../records/wire-role.ts';
import type { RuleHit } from './rule.ts';
import { workDone } from './work-done.ts';

/** A hit when the wire that a lead is joined to is not proven to have one of some roles. */
export function provenWire(
  job: Job,
  evidence: Evidence,
  lead: DeviceLead,
  roles: readonly WireRole[],
): readonly RuleHit[] {
  return (workDone(job).connections ?? [])
    .filter((each) => each.lead === lead)
    .flatMap((each): readonly RuleHit[] => {
      const wire = evidence.wires.find((one) => one.point === each.point);
      if (wire === undefined)
        return [
          {
            at: lead,
            what: `The ${lead} lead names no wire that was measured.`,
            whatToDo: 'Record the probe point that it is joined to, with its readings.',
          },
        ];
      if (wire.conclusion.kind === 'concluded' && roles.includes(wire.conclusion.role)) return [];
      const next =
        wire.conclusion.kind === 'open'
          ? (wire.conclusion.wants?.sentence ?? 'Find another wire.')
          : 'Find another wire.';
      return [
        {
          at: lead,
          what: `The ${lead} lead is joined to ${wire.point}, which is not proven: ${wire.sentence}`,
          whatToDo: next,
        },
      ];
    });
}
