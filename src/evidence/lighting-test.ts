import type { RoleTest } from './evidence.ts';
import { isOnly, type Levelled } from './levels-at.ts';

/**
 * Whether a wire follows the vehicle's lamps: the supply with them on, nothing with them off, in one key position.
 * A reading without a word on the lamps was taken with them off (common practice, no source).
 */
export function lightingTest(levelledReadings: readonly Levelled[]): RoleTest {
  const readings = levelledReadings.filter((each) => !each.reading.loaded && each.void === null);
  const lit = readings.filter((each) => each.reading.lights === 'on');
  const dark = readings.filter((each) => each.reading.lights !== 'on');
  const against = [
    ...dark.filter((each) => isOnly(each.levels, 'between', 'low', 'supply', 'above')),
    // many vehicles cut their lamps while cranking
    ...lit.filter((each) => isOnly(each.levels, 'zero') && each.reading.key !== 'crank'),
  ];
  const pair = lit
    .filter((each) => isOnly(each.levels, 'supply'))
    .flatMap((on) =>
      dark.filter((off) => isOnly(off.levels, 'zero') && off.reading.key === on.reading.key).map((off) => [off, on]),
    )
    .at(0);
  const result = against.length > 0 ? 'fails' : pair === undefined ? 'not measured' : 'passes';
  const because = result === 'fails' ? against : (pair ?? []);
  return {
    role: 'lighting',
    test: { kind: 'follows the lamps' },
    key: null,
    result,
    because: because.map((each) => each.reading),
  };
}
