import type { Evidence, WantedReading, WireEvidence } from '../evidence/evidence.ts';
import type { DeviceLead } from '../records/connection.ts';
import type { Job } from '../records/job.ts';
import type { WireRole } from '../records/wire-role.ts';
import type { Hit, Voice } from './rule-words.ts';
import { workDone } from './work-done.ts';

/** What the rules of proof say, each with a summary of its own. */
export const provenWireWords = {
  'no wire named': (joint: { lead: DeviceLead }, voice: Voice) => ({
    what: `The ${voice.lead(joint.lead)} lead names no wire that was measured.`,
    whatToDo: 'Record the probe point that it is joined to, with its readings.',
  }),
  'not proven': (
    joint: { lead: DeviceLead; point: string; wire: WireEvidence; wants: WantedReading | null },
    voice: Voice,
  ) => ({
    what: `The ${voice.lead(joint.lead)} lead is joined to ${joint.point}, which is not proven: ${voice.wire(joint.wire)}`,
    whatToDo: voice.wanted(joint.wants),
  }),
};

type ProvenWireHit = Hit<{ summary: () => string; why: string; says: typeof provenWireWords }>;

/** A hit when the wire that a lead is joined to is not proven to have one of some roles. */
export function provenWire(
  job: Job,
  evidence: Evidence,
  lead: DeviceLead,
  roles: readonly WireRole[],
): readonly ProvenWireHit[] {
  return (workDone(job).connections ?? [])
    .filter((each) => each.lead === lead)
    .flatMap((each): readonly ProvenWireHit[] => {
      const wire = evidence.wires.find((one) => one.point === each.point);
      if (wire === undefined) return [{ at: lead, says: 'no wire named', figures: { lead } }];
      if (wire.conclusion.kind === 'concluded' && roles.includes(wire.conclusion.role)) return [];
      const wants = wire.conclusion.kind === 'open' ? wire.conclusion.wants : null;
      return [{ at: lead, says: 'not proven', figures: { lead, point: wire.point, wire, wants } }];
    });
}
