import type { ShownReading, WireEvidence } from '../evidence/evidence.ts';
import { isGroundDrop } from '../evidence/ground-test.ts';
import { roleSignatures } from '../evidence/role-signatures.ts';
import { reversed } from '../evidence/surroundings.ts';
import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Reading } from '../records/reading.ts';
import { terminalNumbers } from '../records/wire-role.ts';
import { sayReadings } from './say-readings.ts';
import type { Speech } from './speech.ts';

/** What is known of a wire, as one sentence that a customer's mechanic would accept, with the readings it rests on. */
export function sayWire(wire: WireEvidence, speech: Speech): string {
  const { evidence, role } = speech;
  const name = evidence.wire(wire);
  if (wire.conclusion.kind === 'open') return sayOpen(name, wire, wire.conclusion.remaining, speech);
  const concluded = wire.conclusion.role;
  return evidence.wireIs(name, role(concluded), terminalNumbers[concluded], proofOf(wire, speech));
}

function sayOpen(
  name: string,
  { shown }: WireEvidence,
  remaining: readonly (keyof typeof terminalNumbers)[],
  speech: Speech,
): string {
  const { evidence, role, or } = speech;
  const left = remaining.filter((each) => each !== 'unknown');
  const [only] = left;
  if (only === undefined) return evidence.fitsNoRole(name, levelsInWords(shown, speech));
  if (left.length === roleSignatures.length) return evidence.nothingRuledOut(name);
  if (remaining.length === 1) return evidence.readsLike(name, role(only));
  return evidence.couldBe(name, or(left.map(role)), remaining.includes('unknown'));
}

function proofOf({ conclusion, shown }: WireEvidence, speech: Speech): string {
  if (conclusion.kind === 'open') return '';
  if (conclusion.role === 'ground') return speech.and(shown.map(({ reading }) => groundProof(reading, speech)));
  if (conclusion.role === 'signal')
    return speech.evidence.signalProof(
      sayReadings(
        shown.map(({ reading }) => reading),
        speech,
      ),
    );
  return levelsInWords(shown, speech);
}

/** Readings sorted into dead, live, low and odd, each in the order of a drive. */
function levelsInWords(shown: readonly ShownReading[], speech: Speech): string {
  return (['dead', 'live', 'low', 'odd'] as const)
    .map((level) => ({ level, of: shown.filter((each) => each.shows === level) }))
    .filter(({ of }) => of.length > 0)
    .map(
      ({ level, of }) =>
        `${speech.evidence.shows[level]} ${sayReadings(
          of.map(({ reading }) => reading),
          speech,
        )}`,
    )
    .join('; ');
}

function groundProof(reading: Reading, speech: Speech): string {
  const { evidence, where } = speech;
  const volts = speech.volts(millivoltsFromVolts(reading.volts));
  const position = where(reading.key);
  if (isGroundDrop(reading)) return evidence.dropAt(volts, speech.decimal(reading.loadMilliamps ?? 0), position);
  return reversed(reading) ? evidence.againstLive(volts, position) : `${volts} ${position}`;
}
