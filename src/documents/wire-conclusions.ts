import type { Evidence } from '../evidence/evidence.ts';
import type { Job } from '../records/job.ts';
import type { Writing } from '../words/writing.ts';

/** What each wire is, one sentence a wire with all the readings that decided it, or that it stays open. */
export function wireConclusions(job: Job, evidence: Evidence, writing: Writing): readonly { readonly text: string }[] {
  const { sentences, terms } = writing;
  const speech = writing.speech(job.vehicle);
  return evidence.wires.map((wire) => {
    const said = speech.wire(wire);
    return {
      text:
        wire.conclusion.kind === 'concluded' || wire.verdict === null
          ? said
          : `${said} ${sentences.verdictStands(terms.roles[wire.verdict])}`,
    };
  });
}
