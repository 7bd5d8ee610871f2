import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { groundDropMillivoltsMax } from './electrical-limits.ts';
import type { RoleTest } from './evidence.ts';
import { isOnly } from './levels-at.ts';
import { meterUncertaintyMillivolts } from './meter-uncertainty.ts';
import { type MeasuredLevel, measuredLevels } from './supply-level.ts';
import { reversed, type Surroundings } from './surroundings.ts';

/** A wire that drops more than this under the device's own current leads nowhere that is ground, 12 V (common practice, no source). */
const groundLostMillivolts = 500;

/** Whether a wire is ground: the supply with a negative sign against a live wire, or a small drop while current flows. */
export function groundTest(point: ProbePoint, around: Surroundings): RoleTest {
  const proofs = point.readings.filter((reading) => provesGround(reading, point, around));
  const results = proofs.map((reading) => judgeProof(reading, around));
  // what drops while current flows is no ground, whatever it shows without
  const drops = proofs.some((reading, index) => isGroundDrop(reading) && results[index] === 'not measured');
  const passes = results.includes('passes') && !drops;
  const result = results.includes('fails') ? 'fails' : passes ? 'passes' : 'not measured';
  return {
    role: 'ground',
    test: { kind: 'ground against a live wire, or a small drop' },
    key: null,
    result,
    because: proofs.filter((_, index) => results[index] === result && result !== 'not measured'),
  };
}

/** Whether a wire shows the supply against a live wire where switched feeds are live: it is pulled to ground, so it is none of these feeds. */
export function pulledToGround(point: ProbePoint, around: Surroundings): readonly Reading[] {
  return point.readings.filter(
    (reading) => reversed(reading) && provesGround(reading, point, around) && judgeProof(reading, around) === 'passes',
  );
}

/** Whether the black lead of a reading was on something known to be live. */
export function liveReference(reading: Reading, point: ProbePoint, around: Surroundings): boolean {
  if (reading.reference === 'battery positive') return true;
  // a reference that is not proven live proves nothing: two dead wires agree with each other
  return (
    reading.reference === 'probe point' &&
    reading.referencePoint !== point.name &&
    around.isConstant(reading.referencePoint ?? '')
  );
}

/** The levels of a reading against a live wire, seen from the wire: a ground stands at the supply, a live wire at nothing. */
export function reversedLevels(reading: Reading, around: Surroundings): readonly MeasuredLevel[] {
  const millivolts = -millivoltsFromVolts(reading.volts);
  return measuredLevels(millivolts, around.rangeAt(reading.key), around.system, around.meterOf(reading));
}

/** Whether a reading is a drop along a ground: against battery negative, while the device's own current flows. */
export function isGroundDrop(reading: Reading): boolean {
  // without the device's current there is no drop: a dead wire with a test lamp on it reads nothing as well
  const current = reading.taken === 'after' ? (reading.loadMilliamps ?? 0) : 0;
  return reading.reference === 'battery negative' && reading.loaded && current > 0;
}

/** Whether a wire fed by the switch would be live, so that only a ground shows the supply against a live wire. */
export const feedsAreLive = (reading: Reading) => reading.key === 'on' || reading.key === 'running';

function provesGround(reading: Reading, point: ProbePoint, around: Surroundings): boolean {
  return (
    isGroundDrop(reading) ||
    (reading.taken === 'before' && reading.isolator !== 'open' && liveReference(reading, point, around))
  );
}

function judgeProof(reading: Reading, around: Surroundings): RoleTest['result'] {
  if (!reversed(reading)) {
    const millivolts = Math.abs(millivoltsFromVolts(reading.volts));
    const unsure = meterUncertaintyMillivolts(millivolts, around.meterOf(reading));
    if (millivolts + unsure <= groundDropMillivoltsMax) return 'passes';
    return millivolts - unsure > (groundLostMillivolts * around.system) / 12 ? 'fails' : 'not measured';
  }
  const levels = reversedLevels(reading, around);
  // where switched feeds are dead, their consumers pull them to ground and they read like one
  if (isOnly(levels, 'supply')) return feedsAreLive(reading) ? 'passes' : 'not measured';
  return isOnly(levels, 'zero', 'between') ? 'fails' : 'not measured';
}
