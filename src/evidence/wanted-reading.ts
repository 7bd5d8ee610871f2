import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import type { KeyPosition, WireRole } from '../records/wire-role.ts';
import { concludeRole, type Elimination } from './conclude-role.ts';
import { fortyEightVoltsMillivolts } from './electrical-limits.ts';
import type { WantedReading } from './evidence.ts';
import { isLeak } from './is-leak.ts';
import { levelGroups, levelled } from './levels-at.ts';
import { signatureOf } from './role-signatures.ts';
import { isKeyOut, type Surroundings } from './surroundings.ts';

type Choice = {
  readonly key: KeyPosition;
  readonly reference: 'chassis' | 'battery positive';
  readonly lights: boolean;
  /** trouble it takes: decides between readings that split equally well */
  readonly trouble: number;
};

/** Every reading that may be asked for, the least trouble first: lamps to switch, an engine to crank, ten minutes to wait. */
const choices: readonly Choice[] = (
  [
    ['on', 'dark'],
    ['accessory', 'dark'],
    ['on', 'lit'],
    ['on', 'reversed'],
    ['running', 'dark'],
    ['crank', 'dark'],
    ['out', 'dark'],
    ['accessory', 'lit'],
    ['running', 'lit'],
    ['out', 'lit'],
    ['off', 'dark'],
    ['off', 'lit'],
  ] as const
).map(([key, how], trouble) => ({
  key,
  reference: how === 'reversed' ? 'battery positive' : 'chassis',
  lights: how === 'lit',
  trouble,
}));

/**
 * The single reading that splits the remaining roles best. Each reading that may be taken is played through with what
 * every remaining role would show, and the one after which the fewest roles are expected to remain is wanted.
 * @param point the wire with the readings taken so far
 * @param now what elimination leaves of it
 * @param around what else is known of the job
 * @returns null where no further reading helps, or where the wire must not be probed
 */
export function wantedReading(point: ProbePoint, now: Elimination, around: Surroundings): WantedReading | null {
  // the sleeve of a restraint or high-voltage wire says: hands off
  if (point.sleeve !== 'none') return null;
  // nor is a 48 V line touched again
  if (point.readings.some((reading) => Math.abs(millivoltsFromVolts(reading.volts)) > fortyEightVoltsMillivolts))
    return null;
  const leak = leakToLoad(point, around);
  if (leak !== null) return { ...leak, point: point.name, remaining: now.remaining };
  const outcomes = choices
    .filter((choice) => isAllowed(choice, now.remaining, around))
    .map((choice) => ({ choice, ...playThrough(choice, point, now.remaining, around) }));
  const best = outcomes
    .filter((each) => each.remaining < now.remaining.length || each.missing < now.missing)
    .toSorted(
      (one, other) =>
        one.remaining - other.remaining || one.missing - other.missing || one.choice.trouble - other.choice.trouble,
    )[0];
  if (best === undefined) return null;
  const { key, reference, lights } = best.choice;
  return {
    point: point.name,
    key,
    reference,
    loaded: false,
    lights,
    isolatorClosed: around.hasIsolator,
    secondsWaited: isKeyOut(key) ? around.retainedPowerSeconds : 0,
    remaining: now.remaining,
    expectedRemaining: best.remaining,
  };
}

// small volts where nothing should be: the same place again, with something that draws
function leakToLoad(point: ProbePoint, around: Surroundings): Omit<WantedReading, 'point' | 'remaining'> | null {
  const groups = levelGroups(levelled(point, around));
  const isLoaded = (key: KeyPosition) => groups.some((group) => group.key === key && group.loaded);
  const leak = groups.find((group) => isLeak(group, groups, around) && !isLoaded(group.key));
  if (leak === undefined) return null;
  const { key } = leak;
  return {
    key,
    reference: 'chassis',
    loaded: true,
    lights: leak.lights === 'on',
    isolatorClosed: around.hasIsolator,
    secondsWaited: isKeyOut(key) ? around.retainedPowerSeconds : 0,
    expectedRemaining: 1,
  };
}

function isAllowed(choice: Choice, remaining: readonly WireRole[], around: Surroundings): boolean {
  if (choice.key === 'crank' && !around.cranks) return false;
  // through a lamp or a starter's coil a feed shows the supply against a live wire, just as a ground does
  if (choice.reference === 'battery positive')
    return remaining.includes('ground') && !remaining.includes('lighting') && !remaining.includes('start');
  return !choice.lights || remaining.includes('lighting');
}

function playThrough(choice: Choice, point: ProbePoint, remaining: readonly WireRole[], around: Surroundings) {
  const shares = new Map<ExpectedLevel, number>();
  for (const role of remaining) {
    const levels = expectedLevels(choice, role);
    for (const level of levels) shares.set(level, (shares.get(level) ?? 0) + 1 / levels.length / remaining.length);
  }
  const shown = [...shares].map(([level, share]) => {
    const reading = readingAt(choice, level, around);
    return { share, after: concludeRole({ ...point, readings: [...point.readings, reading] }, around) };
  });
  const mean = (of: (after: Elimination) => number) =>
    Math.round(shown.reduce((sum, each) => sum + each.share * of(each.after), 0) * 1e6) / 1e6;
  return { remaining: mean((after) => after.remaining.length), missing: mean((after) => after.missing) };
}

type ExpectedLevel = 'supply' | 'zero' | 'between' | 'ground';

/** What a wire of one role would show in a reading; two levels where the trade knows both. */
export function expectedLevels(
  choice: Pick<Choice, 'key' | 'reference' | 'lights'>,
  role: WireRole,
): readonly ExpectedLevel[] {
  if (choice.reference === 'battery positive') return role === 'ground' ? ['ground'] : ['zero'];
  if (role === 'unknown') return ['zero'];
  if (role === 'lighting') return [choice.lights ? 'supply' : 'zero'];
  if (role === 'signal') return [isKeyOut(choice.key) ? 'zero' : 'between'];
  const level = signatureOf(role).levels[choice.key];
  return level === 'either' ? ['supply', 'zero'] : [level];
}

function readingAt(choice: Choice, level: ExpectedLevel, around: Surroundings): Reading {
  const range = around.rangeAt(choice.key);
  const supply = (around.supply[choice.key]?.millivolts ?? (range.lowest + range.highest) / 2) / 1000;
  const volts = { supply, zero: 0, between: supply * 0.4, ground: -supply }[level];
  return {
    key: choice.key,
    volts,
    reference: choice.reference,
    secondsWaited: isKeyOut(choice.key) ? around.retainedPowerSeconds : 0,
    loaded: false,
    steady: true,
    taken: 'before',
    isolator: 'closed',
    ...(choice.lights ? { lights: 'on' } : {}),
  };
}
