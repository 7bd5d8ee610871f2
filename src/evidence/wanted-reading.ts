import { type KeyPosition, keyPositions, type WireRole } from '../records/wire-role.ts';
import type { RoleTest, WantedReading } from './evidence.ts';
import { roleSignatures } from './role-signatures.ts';
import { retainedPowerSeconds, where } from './test-roles.ts';

/**
 * The single reading that splits the remaining roles best: fewest roles expected to remain after it.
 * @param point the wire
 * @param remaining roles still possible
 * @param tests all tests of the wire
 * @param cranks false on vehicles that do not crank
 */
export function wantedReading(
  point: string,
  remaining: readonly WireRole[],
  tests: readonly RoleTest[],
  cranks: boolean,
): WantedReading | null {
  const open = keyPositions
    .filter((key) => cranks || key !== 'crank')
    .filter((key) =>
      tests.some(
        (test) => remaining.includes(test.role) && test.result === 'not measured' && test.test.endsWith(where(key)),
      ),
    );
  const choices = open.map((key) => ({ key, expected: expectedRemaining(key, remaining) }));
  const best = choices.toSorted((one, other) => one.expected - other.expected)[0];
  const groundOpen =
    remaining.includes('ground') &&
    tests.some((test) => test.role === 'ground' && test.result === 'not measured' && test.test.startsWith('shows'));
  if (groundOpen && (best === undefined || remaining.length <= 2 || best.expected >= remaining.length - 0.5)) {
    return {
      key: 'on',
      reference: 'battery positive',
      loaded: false,
      secondsWaited: 0,
      expectedRemaining: 1 + (remaining.length - 1) / remaining.length,
      sentence: `Read ${point} with the black lead on a known constant: a ground shows the supply with a minus sign.`,
    };
  }
  if (best === undefined) return null;
  const out = best.key === 'out' || best.key === 'off';
  const wait = out ? retainedPowerSeconds : 0;
  const sentence = `Read ${point} ${where(best.key)}${out ? `, ${retainedPowerSeconds / 60} minutes after taking it out` : ''} (about ${best.expected.toFixed(1)} of ${remaining.length} roles would remain).`;
  return {
    key: best.key,
    reference: 'chassis',
    loaded: false,
    secondsWaited: wait,
    expectedRemaining: best.expected,
    sentence,
  };
}

function expectedRemaining(key: KeyPosition, remaining: readonly WireRole[]): number {
  const levels = remaining.map((role) => roleSignatures.find((each) => each.role === role)?.levels[key] ?? 'either');
  const either = levels.filter((level) => level === 'either').length;
  const groups = [
    levels.filter((level) => level === 'supply').length,
    levels.filter((level) => level === 'zero').length,
  ].filter((size) => size > 0);
  const total = groups.reduce((sum, size) => sum + size, 0);
  return total === 0 ? remaining.length : groups.reduce((sum, size) => sum + (size * (size + either)) / total, 0);
}
