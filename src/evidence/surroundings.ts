import type { MeterProfile } from '../records/book.ts';
import type { Reading, SupplyReading } from '../records/reading.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import type { Evidence } from './evidence.ts';
import type { SupplyRange } from './supply-level.ts';

/** Power kept on after key out may last minutes: a reading that is not nothing counts after this wait (common practice, no source). */
export const retainedPowerSeconds = 600;

/** What the tests of one wire need to know besides its readings. */
export type Surroundings = {
  readonly supply: Evidence['supply'];
  readonly rangeAt: (key: KeyPosition) => SupplyRange;
  readonly system: 12 | 24;
  readonly cranks: boolean;
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
