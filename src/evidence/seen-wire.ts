import type { ProbePoint } from '../records/probe-point.ts';
import type { Conclusion, TrapFacts } from './evidence.ts';
import type { LevelGroup, Levelled } from './levels-at.ts';
import type { Surroundings } from './surroundings.ts';

/** What the traps of one wire are looked for in. */
export type Seen = {
  readonly point: ProbePoint;
  readonly readings: readonly Levelled[];
  readonly groups: readonly LevelGroup[];
  readonly conclusion: Conclusion;
  readonly around: Surroundings;
};

/** Traps as they are found, before they carry the wire's name. */
export type Found = readonly TrapFacts[];
