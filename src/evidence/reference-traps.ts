import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import { liveReference, reversedLevels } from './ground-test.ts';
import { where } from './key-words.ts';
import { isOnly } from './levels-at.ts';
import { type Found, type Seen, written } from './seen-wire.ts';
import { reversed } from './surroundings.ts';

/** Readings that have the sign or the size of a black lead in the wrong place; the first of them. */
export function referenceTraps(seen: Seen): Found {
  const sentence = againstGround(seen) ?? againstLive(seen);
  return sentence === null ? [] : [['wrong reference', sentence]];
}

function againstGround({ point, readings, around }: Seen): string | null {
  for (const { reading, levels } of readings) {
    const position = where(reading.key, around.words);
    if (isOnly(levels, 'negative'))
      return `${point.name} reads ${written(reading)} ${position}: the black lead was on something live, or the leads were swapped.`;
    if (isOnly(levels, 'above'))
      return `${point.name} reads ${written(reading)} ${position}, more than the supply: one of the two is wrong.`;
  }
  return null;
}

function againstLive({ point, readings, around }: Seen): string | null {
  const liveToo = readings.some((each) => !each.reading.loaded && isOnly(each.levels, 'supply'));
  for (const reading of point.readings.filter((each) => reversed(each) && each.taken === 'before')) {
    if (millivoltsFromVolts(reading.volts) > 1000)
      return `${point.name} reads ${written(reading)} against a live wire: the leads may be swapped, or the reference was not live.`;
    if (!liveReference(reading, point, around))
      return `${point.name} was read against ${reading.referencePoint ?? 'another wire'}, which is not proven constant: a dead reference proves nothing.`;
    if (liveToo && isOnly(reversedLevels(reading, around), 'supply'))
      return `${point.name} shows the supply against ground and against a live wire as well: one of the two references was wrong.`;
  }
  return null;
}
