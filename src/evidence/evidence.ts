import type { Reading, SupplyReading } from '../records/reading.ts';
import type { KeyPosition, WireRole } from '../records/wire-role.ts';

/** One test of one role on one wire. */
export type RoleTest = {
  readonly role: WireRole;
  /** what should hold, in words: "reads the supply with the key out" */
  readonly test: string;
  /** the key position it is about, or null for a test that compares readings */
  readonly key: KeyPosition | null;
  readonly result: 'passes' | 'fails' | 'not measured';
  readonly because: readonly Reading[];
};

/** The reading to take next. */
export type WantedReading = {
  readonly key: KeyPosition;
  readonly reference: Reading['reference'];
  readonly loaded: boolean;
  /** true when the vehicle's lamps must be switched on for it */
  readonly lights: boolean;
  readonly secondsWaited: number;
  /** how many roles are expected to remain after it */
  readonly expectedRemaining: number;
  /** one sentence a fitter acts on: "Read P2 with the key out, ten minutes after taking it out." */
  readonly sentence: string;
};

export type Conclusion =
  | { readonly kind: 'concluded'; readonly role: WireRole; readonly because: readonly Reading[] }
  | { readonly kind: 'open'; readonly remaining: readonly WireRole[]; readonly wants: WantedReading | null };

/** Something a fitter must know about the readings of one wire (or of the whole job, point ''). */
export type Trap = {
  readonly kind:
    | 'retained power'
    | 'delayed power'
    | 'reads low'
    | 'drops in crank'
    | 'signal only'
    | 'ghost volts'
    | 'average of a signal'
    | 'half the supply'
    | 'through a load'
    | 'wrong reference'
    | 'isolator side'
    | 'over-voltage'
    | 'system differs'
    | 'contradicts another wire'
    | 'unsteady'
    | 'supply not measured'
    | 'two constants'
    | 'readings disagree';
  readonly point: string;
  readonly sentence: string;
};

export type WireEvidence = {
  readonly point: string;
  readonly tests: readonly RoleTest[];
  readonly conclusion: Conclusion;
  readonly verdict: WireRole | null;
  readonly agreement: 'agreement' | 'not proven' | 'contradiction' | 'no verdict';
  readonly traps: readonly Trap[];
  /** one sentence a customer's mechanic would accept, with the readings */
  readonly sentence: string;
};

export type Evidence = {
  /** nominal system found from the readings; null where they do not tell */
  readonly systemVolts: 12 | 24 | null;
  /** the supply in each key position, in millivolts */
  readonly supply: Readonly<
    Partial<Record<KeyPosition, { readonly millivolts: number; readonly from: readonly SupplyReading[] }>>
  >;
  readonly wires: readonly WireEvidence[];
  readonly traps: readonly Trap[];
};
