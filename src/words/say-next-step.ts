import type { WireEvidence } from '../evidence/evidence.ts';
import type { DeviceLead } from '../records/connection.ts';
import type { Speech } from './speech.ts';

/**
 * What to do next about one wire, in one or two sentences, or null when nothing is left to do.
 * @param wire what its readings prove
 * @param lead the lead of the device that is joined to it, or null
 * @param speech how facts are said
 */
export function sayNextStep(wire: WireEvidence, lead: DeviceLead | null, speech: Speech): string | null {
  const { conclusion, verdict } = wire;
  const { next } = speech.evidence;
  if (wire.agreement === 'contradiction' && verdict !== null) {
    const found = conclusion.kind === 'concluded' ? speech.role(conclusion.role) : null;
    return next.ruledOut(speech.role(verdict), found, lead === null ? null : speech.lead(lead));
  }
  if (conclusion.kind === 'open')
    return conclusion.wants === null && lead === null ? null : speech.wanted(conclusion.wants);
  return wire.agreement === 'no verdict' ? next.record(speech.role(conclusion.role)) : null;
}
