import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import { fortyEightVoltsMillivolts } from './electrical-limits.ts';
import type { TrapFacts } from './evidence.ts';
import { liveReference, reversedLevels } from './ground-test.ts';
import { isOnly } from './levels-at.ts';
import type { Found, Seen } from './seen-wire.ts';
import { reversed } from './surroundings.ts';

type WrongReference = Extract<TrapFacts, { kind: 'wrong reference' }>;
const kind = 'wrong reference';

/** Readings that have the sign or the size of a black lead in the wrong place; the first of them. */
export function referenceTraps(seen: Seen): Found {
  const found = againstGround(seen) ?? againstLive(seen);
  return found === null ? [] : [found];
}

function againstGround({ readings }: Seen): WrongReference | null {
  for (const { reading, levels } of readings) {
    if (isOnly(levels, 'negative')) return { kind, how: 'negative', reading };
    const isHigher = Math.abs(millivoltsFromVolts(reading.volts)) > fortyEightVoltsMillivolts;
    if (isOnly(levels, 'above') && !isHigher) return { kind, how: 'above the supply', reading };
  }
  return null;
}

function againstLive({ point, readings, around }: Seen): WrongReference | null {
  const liveToo = readings.some((each) => !each.reading.loaded && isOnly(each.levels, 'supply'));
  for (const reading of point.readings.filter((each) => reversed(each) && each.taken === 'before')) {
    if (millivoltsFromVolts(reading.volts) > 1000) return { kind, how: 'not live', reading };
    if (!liveReference(reading, point, around)) return { kind, how: 'not proven constant', reading };
    if (liveToo && isOnly(reversedLevels(reading, around), 'supply')) return { kind, how: 'both ways', reading };
  }
  return null;
}
