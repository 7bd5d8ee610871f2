import type { RoleTest } from './evidence.ts';
import { isLeak, vanishes } from './is-leak.ts';
import { isTap } from './is-tap.ts';
import { isOnly, type LevelGroup, type Levelled } from './levels-at.ts';
import { isGhost } from './load-comparison.ts';
import type { Surroundings } from './surroundings.ts';

const awakeKeys = ['accessory', 'on', 'running'] as const;

/**
 * Whether a wire carries a signal: an average between nothing and the supply, or a display that wanders, while the vehicle is awake.
 * A meter shows the mean of a data line or a pulse-width output (common practice, no source).
 */
export function signalTest(
  readings: readonly Levelled[],
  groups: readonly LevelGroup[],
  around: Surroundings,
): RoleTest {
  const unloaded = groups.filter((group) => !group.loaded);
  const awake = unloaded.filter((group) => awakeKeys.some((key) => key === group.key));
  const wanders = (group: LevelGroup) => group.counted.some((each) => !each.reading.steady);
  // small steady volts on a wire that is fed elsewhere are a leak, 12 V in a 24 V vehicle are a tap
  const odd = awake.filter(
    (group) =>
      wanders(group) || (isOnly(group.levels, 'between') && !isLeak(group, groups, around) && !isTap(group, around)),
  );
  const plain = unloaded.filter((group) =>
    isOnly(group.levels, 'zero')
      ? group.key === 'on' || group.key === 'running'
      : isOnly(group.levels, 'supply') && group.key !== 'crank',
  );
  const unclear = awake
    .filter((group) => !(isLeak(group, groups, around) && vanishes(group, groups)))
    .some((group) => group.levels.includes('between') || group.levels.includes('low'));
  const result = isGhost(readings)
    ? 'not measured'
    : odd.length > 0
      ? 'passes'
      : plain.length > 0 && !unclear
        ? 'fails'
        : 'not measured';
  const because = result === 'passes' ? odd : result === 'fails' ? plain : [];
  return {
    role: 'signal',
    test: { kind: 'odd or wandering' },
    key: null,
    result,
    because: because.flatMap((group) => group.counted.map((each) => each.reading)),
  };
}
