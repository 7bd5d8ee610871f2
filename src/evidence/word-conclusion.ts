import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { keyPositions, terminalNumbers, type WireRole } from '../records/wire-role.ts';
import type { Conclusion } from './evidence.ts';
import { isGroundDrop } from './ground-test.ts';
import { where, writeWait } from './key-words.ts';
import { isOnly, levelsOf } from './levels-at.ts';
import { isKeyOut, reversed, type Surroundings } from './surroundings.ts';

/** A conclusion as one sentence a customer's mechanic would accept, with the readings it rests on. */
export function wordConclusion(point: ProbePoint, conclusion: Conclusion, around: Surroundings): string {
  const name = nameOf(point);
  if (conclusion.kind === 'open') return wordOpen(name, conclusion.remaining);
  const terminal = terminalNumbers[conclusion.role];
  const proof = proofOf(conclusion.role, conclusion.because, around);
  return `${name} is ${conclusion.role}${terminal === null ? '' : ` (terminal ${terminal})`}: ${proof}.`;
}

function nameOf(point: ProbePoint): string {
  const colour = [point.colour, point.stripe].filter((word) => word !== undefined).join(' with ');
  return `${colour === '' ? 'The wire' : `${colour[0]?.toUpperCase()}${colour.slice(1)}`} (${point.name})`;
}

function wordOpen(name: string, remaining: readonly WireRole[]): string {
  const left = remaining.filter((role) => role !== 'unknown');
  if (left.length === 0) return `${name} fits no role: it reads like none of the feeds looked for.`;
  const dead = remaining.includes('unknown') ? ', or lead nowhere' : '';
  return `${name} is not proven; it could still be ${left.join(' or ')}${dead}.`;
}

function proofOf(role: WireRole, because: readonly Reading[], around: Surroundings): string {
  const inOrder = keyPositions.flatMap((key) => because.filter((reading) => reading.key === key));
  const said = (reading: Reading) => wordReading(reading, around);
  if (role === 'ground') return inOrder.map(said).join(', ');
  if (role === 'signal') return `neither battery volts nor nothing, ${inOrder.map(said).join(', ')}; never splice it`;
  const live = inOrder.filter((reading) => !isOnly(levelsOf(reading, around), 'zero'));
  const dead = inOrder.filter((reading) => isOnly(levelsOf(reading, around), 'zero'));
  const parts = [
    ...(dead.length === 0 ? [] : [`dead ${dead.map(said).join(', ')}`]),
    ...(live.length === 0 ? [] : [`battery volts ${live.map(said).join(', ')}`]),
  ];
  return parts.join('; ');
}

/** A reading in words: "with the key out (12.57 V after 12 min)". */
export function wordReading(reading: Reading, around: Surroundings): string {
  const position = where(reading.key, around.words);
  const lamps = reading.lights === undefined ? '' : ` and the lamps ${reading.lights}`;
  const wait =
    isKeyOut(reading.key) && reading.secondsWaited !== undefined ? ` after ${writeWait(reading.secondsWaited)}` : '';
  const volts = `${writeVolts(millivoltsFromVolts(reading.volts))} V${wait}`;
  if (isGroundDrop(reading)) return `${volts} of drop at ${reading.loadMilliamps} mA ${position}`;
  if (reversed(reading)) return `${volts} against a live wire ${position}`;
  return `${position}${lamps} (${volts}${reading.loaded ? ', loaded' : ''})`;
}
