import type { WireEvidence } from '../evidence/evidence.ts';
import type { DeviceLead } from '../records/connection.ts';

/**
 * What to do next about one wire, or null when nothing is left to do.
 * @param wire what its readings prove
 * @param lead the lead of the device that is joined to it, or null
 */
export function nextStep(wire: WireEvidence, lead: DeviceLead | null): string | null {
  const { conclusion, verdict } = wire;
  if (wire.agreement === 'contradiction') {
    const found = conclusion.kind === 'concluded' ? ` The readings say ${conclusion.role}.` : '';
    return `The readings rule out "${verdict}".${found} Read it again in each key position; if they stand, ${lead === null ? 'mend the verdict' : `join the ${lead} lead to another wire`}.`;
  }
  if (conclusion.kind === 'open') return conclusion.wants?.sentence ?? (lead === null ? null : 'Find another wire.');
  return wire.agreement === 'no verdict' ? `Record the verdict: ${conclusion.role}.` : null;
}
