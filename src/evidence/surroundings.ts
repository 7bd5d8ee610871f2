import type { MeterProfile } from '../records/book.ts';
import type { Reading, SupplyReading } from '../records/reading.ts';
import type { Vehicle } from '../records/vehicle.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import type { Evidence } from './evidence.ts';
import type { SupplyRange } from './supply-level.ts';

/** The longest that power is kept on after key out, and the wait on an old vehicle, seconds. */
export const keyOutWaitSeconds = { long: 600, short: 180 } as const;
/** The first model year whose control units may keep power on for minutes. */
export const keptPowerSinceYear = 1996;

/**
 * How long power may be kept on after key out, in seconds: a reading that is not nothing counts after this wait.
 * With control units on a data network, which keep relays up until it sleeps, ten minutes; a vehicle started with a key and built
 * before 1996, when a few relays and a diesel's stop solenoid were all that was kept, three (common practice, no source).
 * @param vehicle year and start; an unknown year counts as new
 */
export function retainedPowerSeconds({ year, start, drive }: Pick<Vehicle, 'year' | 'start' | 'drive'>): number {
  const isOld =
    year !== undefined && year < keptPowerSinceYear && start !== 'button' && (drive ?? 'combustion') === 'combustion';
  return isOld ? keyOutWaitSeconds.short : keyOutWaitSeconds.long;
}

/** What the tests of one wire need to know besides its readings. */
export type Surroundings = {
  readonly supply: Evidence['supply'];
  readonly rangeAt: (key: KeyPosition) => SupplyRange;
  readonly system: 12 | 24;
  /** whether the vehicle turns an engine with a starter, so that a role may need the reading in crank */
  readonly cranks: boolean;
  /** true where the supply's own readings contradict each other or cannot be a battery's: then no wire is proven by them */
  readonly nothingFollows: boolean;
  /** seconds after key out from which a reading that is not nothing counts */
  readonly retainedPowerSeconds: number;
  readonly hasIsolator: boolean;
  /** whether another wire of the job is proven constant by its own readings */
  readonly isConstant: (pointName: string) => boolean;
  readonly meterOf: (reading: Reading | SupplyReading) => MeterProfile | null;
};

/** Readings against a live wire: the meter's black lead on battery positive or on a proven constant. */
export const reversed = (reading: Reading) =>
  reading.reference === 'battery positive' || reading.reference === 'probe point';

/** Whether a key position is one in which switched wires are dead. */
export const isKeyOut = (key: KeyPosition) => key === 'out' || key === 'off';
