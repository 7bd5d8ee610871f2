import type { WantedReading } from '../evidence/evidence.ts';
import { isKeyOut } from '../evidence/surroundings.ts';
import type { Speech } from './speech.ts';

/** The reading to take next, as one sentence that a fitter acts on; null: another wire has to be found. */
export function sayWanted(wanted: WantedReading | null, speech: Speech): string {
  const words = speech.evidence.wants;
  if (wanted === null) return words.again;
  const { point, key, remaining, expectedRemaining, lights, secondsWaited, isolatorClosed, loaded } = wanted;
  const [only] = remaining;
  const count =
    remaining.length === 1 && only !== undefined
      ? words.toProve(speech.role(only))
      : words.wouldRemain(speech.tenths(expectedRemaining), String(remaining.length));
  const where = speech.where(key);
  if (wanted.reference === 'battery positive') return words.reversed(point, where, count);
  const wait = isKeyOut(key) ? { minutes: String(secondsWaited / 60), from: speech.endOfDrive, isolatorClosed } : null;
  return words.read({ point, where, lamps: lights, loaded, wait, count });
}
