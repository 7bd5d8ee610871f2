import { isKeyOut, reversed } from '../evidence/surroundings.ts';
import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Reading } from '../records/reading.ts';
import type { Speech } from './speech.ts';

/** Readings in words, each key position once: "with the key out (12.57 V after 12 min) and with the key on (12.40 V)". */
export function sayReadings(readings: readonly Reading[], speech: Speech): string {
  const positions = new Map<string, string[]>();
  for (const reading of readings) {
    const position = positionOf(reading, speech);
    positions.set(position, [...(positions.get(position) ?? []), sayVolts(reading, speech)]);
  }
  return speech.and([...positions].map(([position, volts]) => `${position} (${volts.join(', ')})`));
}

function positionOf(reading: Reading, { where, evidence }: Speech): string {
  const lamps = reading.lights === undefined ? '' : evidence.lamps[reading.lights];
  const isolator = reading.isolator === 'open' ? evidence.isolatorOpen : '';
  return `${where(reading.key)}${lamps}${isolator}${reversed(reading) ? evidence.blackOnLive : ''}`;
}

function sayVolts(reading: Reading, { evidence, volts, wait }: Speech): string {
  const plain = volts(millivoltsFromVolts(reading.volts));
  const waited = isKeyOut(reading.key) ? reading.secondsWaited : undefined;
  const timed = waited === undefined ? plain : evidence.after(plain, wait(waited));
  return reading.loaded ? evidence.loaded(timed) : timed;
}
