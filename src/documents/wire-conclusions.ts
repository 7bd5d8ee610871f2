import type { Evidence } from '../evidence/evidence.ts';
import type { Job } from '../records/job.ts';
import type { Reading } from '../records/reading.ts';
import type { Vehicle } from '../records/vehicle.ts';
import { terminalNumbers } from '../records/wire-role.ts';
import type { Writing } from '../words/writing.ts';
import { keyWord } from './key-word.ts';
import { colourOf } from './wire-words.ts';

/** What each wire is, one sentence a wire with the readings that decided it, or that it stays open. */
export function wireConclusions(job: Job, evidence: Evidence, writing: Writing): readonly { readonly text: string }[] {
  const { sentences, terms } = writing;
  return evidence.wires.map((wire) => {
    const colour = colourOf(job.probePoints?.find((point) => point.name === wire.point));
    if (wire.conclusion.kind === 'concluded') {
      const { role, because } = wire.conclusion;
      return {
        text: sentences.wireIs({
          name: wire.point,
          colour,
          role: terms.roles[role],
          terminal: terminalNumbers[role],
          readings: because.slice(0, 5).map((reading) => readingText(reading, job.vehicle, writing)),
        }),
      };
    }
    const roles = wire.conclusion.remaining.filter((role) => role !== 'unknown').map((role) => terms.roles[role]);
    const open = sentences.wireOpen({ name: wire.point, colour, roles });
    return {
      text: wire.verdict === null ? open : `${open} ${sentences.verdictStands(terms.roles[wire.verdict])}`,
    };
  });
}

function readingText(reading: Reading, vehicle: Vehicle, writing: Writing): string {
  const against = reading.reference === 'probe point' || reading.reference === 'battery positive';
  return writing.sentences.reading(
    writing.volts(reading.volts),
    writing.terms.whereKey[keyWord(reading.key, vehicle)],
    against ? 'against a live wire' : reading.loaded ? 'loaded' : 'plain',
  );
}
