import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { keyPositions } from '../records/wire-role.ts';
import type { Conclusion, ShownReading } from './evidence.ts';
import { isOnly, levelsOf } from './levels-at.ts';
import { reversed, type Surroundings } from './surroundings.ts';

/** The readings that a conclusion rests on, or all plain ones of an open wire, each with what it shows, in the order of a drive. */
export function shownReadings(
  point: ProbePoint,
  conclusion: Conclusion,
  around: Surroundings,
): readonly ShownReading[] {
  const readings =
    conclusion.kind === 'concluded'
      ? conclusion.because
      : point.readings.filter((reading) => !reversed(reading) && reading.taken === 'before');
  return keyPositions
    .flatMap((key) => readings.filter((reading) => reading.key === key))
    .map((reading) => ({ reading, shows: whatShows(reading, around) }));
}

function whatShows(reading: Reading, around: Surroundings): ShownReading['shows'] {
  const levels = levelsOf(reading, around);
  if (isOnly(levels, 'zero')) return 'dead';
  if (isOnly(levels, 'supply', 'above')) return 'live';
  return isOnly(levels, 'low', 'supply') ? 'low' : 'odd';
}
