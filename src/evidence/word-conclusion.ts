import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { keyPositions, terminalNumbers, type WireRole } from '../records/wire-role.ts';
import type { Conclusion } from './evidence.ts';
import { isGroundDrop } from './ground-test.ts';
import { where, writeWait } from './key-words.ts';
import { isOnly, levelsOf } from './levels-at.ts';
import { roleSignatures } from './role-signatures.ts';
import { isKeyOut, reversed, type Surroundings } from './surroundings.ts';

/** A conclusion as one sentence a customer's mechanic would accept, with the readings it rests on. */
export function wordConclusion(point: ProbePoint, conclusion: Conclusion, around: Surroundings): string {
  const name = nameOf(point);
  if (conclusion.kind === 'open') return wordOpen(name, point, conclusion.remaining, around);
  const terminal = terminalNumbers[conclusion.role];
  const proof = proofOf(conclusion.role, conclusion.because, around);
  return `${name} is ${conclusion.role}${terminal === null ? '' : ` (terminal ${terminal})`}: ${proof}.`;
}

function nameOf(point: ProbePoint): string {
  const colour = [point.colour, point.stripe].filter((word) => word !== undefined).join(' with ');
  return `${colour === '' ? 'The wire' : `${colour[0]?.toUpperCase()}${colour.slice(1)}`} (${point.name})`;
}

function wordOpen(name: string, point: ProbePoint, remaining: readonly WireRole[], around: Surroundings): string {
  const left = remaining.filter((role) => role !== 'unknown');
  if (left.length === 0) {
    const plain = point.readings.filter((reading) => !reversed(reading) && reading.taken === 'before');
    const readings = plain.length === 0 ? '' : `: ${levelsInWords(plain, around)}`;
    return `${name} fits none of the roles looked for${readings}.`;
  }
  if (left.length === roleSignatures.length) return `${name} is not proven; nothing that was read rules out any role.`;
  if (remaining.length === 1) return `${name} is not proven yet; so far it reads like ${left[0]}.`;
  const dead = remaining.includes('unknown') ? ', or lead nowhere' : '';
  return `${name} is not proven; it could still be ${left.join(' or ')}${dead}.`;
}

function proofOf(role: WireRole, because: readonly Reading[], around: Surroundings): string {
  if (role === 'ground') return listed(inOrder(because).map((reading) => wordGroundProof(reading, around)));
  if (role === 'signal') return `neither battery volts nor nothing ${wordReadings(because, around)}; never splice it`;
  return levelsInWords(because, around);
}

const inOrder = (readings: readonly Reading[]) =>
  keyPositions.flatMap((key) => readings.filter((reading) => reading.key === key));

/** Readings sorted into dead, live and odd, each in the order of a drive. */
function levelsInWords(readings: readonly Reading[], around: Surroundings): string {
  const sorted = inOrder(readings).map((reading) => ({ reading, levels: levelsOf(reading, around) }));
  const dead = sorted.filter((each) => isOnly(each.levels, 'zero'));
  const live = sorted.filter((each) => isOnly(each.levels, 'supply', 'above'));
  const low = sorted.filter((each) => !live.includes(each) && isOnly(each.levels, 'low', 'supply'));
  const rest = sorted.filter((each) => ![...dead, ...live, ...low].includes(each));
  const parts = [
    ['dead', dead],
    ['battery volts', live],
    ['less than battery volts', low],
    ['neither battery volts nor nothing', rest],
  ] as const;
  return parts
    .filter(([, of]) => of.length > 0)
    .map(
      ([word, of]) =>
        `${word} ${wordReadings(
          of.map((each) => each.reading),
          around,
        )}`,
    )
    .join('; ');
}

/** "a, b and c". */
function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** Readings in words, each key position once: "with the key out (12.57 V after 12 min) and with the key on (12.40 V)". */
function wordReadings(readings: readonly Reading[], around: Surroundings): string {
  const positions = new Map<string, string[]>();
  for (const reading of inOrder(readings)) {
    const lamps = reading.lights === undefined ? '' : ` and the lamps ${reading.lights}`;
    const position = `${where(reading.key, around.words)}${lamps}`;
    positions.set(position, [...(positions.get(position) ?? []), wordVolts(reading)]);
  }
  return listed([...positions].map(([position, volts]) => `${position} (${volts.join(', ')})`));
}

function wordVolts(reading: Reading): string {
  const waited = isKeyOut(reading.key) ? reading.secondsWaited : undefined;
  const wait = waited === undefined ? '' : ` after ${writeWait(waited)}`;
  return `${writeVolts(millivoltsFromVolts(reading.volts))} V${wait}${reading.loaded ? ' loaded' : ''}`;
}

function wordGroundProof(reading: Reading, around: Surroundings): string {
  const position = where(reading.key, around.words);
  const volts = `${writeVolts(millivoltsFromVolts(reading.volts))} V`;
  if (isGroundDrop(reading)) return `${volts} of drop at ${reading.loadMilliamps} mA ${position}`;
  return reversed(reading) ? `${volts} against a live wire ${position}` : `${volts} ${position}`;
}
