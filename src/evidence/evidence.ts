import type { Reading, SupplyReading } from '../records/reading.ts';
import type { KeyPosition, WireRole } from '../records/wire-role.ts';

/** What a test of a role asks; `reads` is about one key position. */
export type TestKind =
  | { readonly kind: 'reads'; readonly level: 'supply' | 'nothing'; readonly key: KeyPosition }
  | { readonly kind: 'ground against a live wire, or a small drop' }
  | { readonly kind: 'no ground' }
  | { readonly kind: 'has a starter' }
  | { readonly kind: 'goes dead without delay' }
  | { readonly kind: 'holds under load' }
  | { readonly kind: 'follows the lamps' }
  | { readonly kind: 'odd or wandering' };

/** One test of one role on one wire. */
export type RoleTest = {
  readonly role: WireRole;
  readonly test: TestKind;
  /** the key position it is about, or null for a test that compares readings */
  readonly key: KeyPosition | null;
  readonly result: 'passes' | 'fails' | 'not measured';
  readonly because: readonly Reading[];
};

/** The reading to take next. */
export type WantedReading = {
  readonly point: string;
  readonly key: KeyPosition;
  readonly reference: Reading['reference'];
  readonly loaded: boolean;
  /** true when the vehicle's lamps must be switched on for it */
  readonly lights: boolean;
  /** true where the vehicle has a battery isolator, which must be closed for it */
  readonly isolatorClosed: boolean;
  readonly secondsWaited: number;
  /** the roles that are possible before it */
  readonly remaining: readonly WireRole[];
  /** how many roles are expected to remain after it */
  readonly expectedRemaining: number;
};

export type Conclusion =
  | { readonly kind: 'concluded'; readonly role: WireRole; readonly because: readonly Reading[] }
  | { readonly kind: 'open'; readonly remaining: readonly WireRole[]; readonly wants: WantedReading | null };

/** A reading with what it shows: nothing, the supply, less than the supply, or neither. */
export type ShownReading = { readonly reading: Reading; readonly shows: 'dead' | 'live' | 'low' | 'odd' };

/** A constant compared with others of the job. */
export type ComparedConstant = {
  readonly point: string;
  readonly wanders: boolean;
  /** the most it read below the supply outside cranking, millivolts */
  readonly lostMillivolts: number;
  readonly fuseAmperes: number | null;
  readonly switched: boolean;
};

/** What a trap is about, with its figures. */
export type TrapFacts =
  | { readonly kind: 'delayed power'; readonly reading: Reading }
  | { readonly kind: 'retained power'; readonly reading: Reading; readonly neededSeconds: number }
  | { readonly kind: 'reads low'; readonly reading: Reading; readonly supplyMillivolts: number | null }
  | { readonly kind: 'drops in crank' }
  | { readonly kind: 'signal only'; readonly unloaded: Reading; readonly loaded: Reading }
  | { readonly kind: 'ghost volts'; readonly reading: Reading | null }
  | { readonly kind: 'average of a signal'; readonly reading: Reading | null; readonly twisted: boolean }
  | { readonly kind: 'half the supply'; readonly reading: Reading }
  | {
      readonly kind: 'isolator side';
      readonly how: 'dead with it open' | 'dead proves nothing' | 'goes dead with it' | 'read it open';
      readonly reading: Reading | null;
    }
  | { readonly kind: 'over-voltage'; readonly key: KeyPosition; readonly millivolts: number }
  | { readonly kind: 'system differs'; readonly found: 12 | 24; readonly recorded: 12 | 24 }
  | { readonly kind: 'unsteady'; readonly key: KeyPosition }
  | { readonly kind: 'readings disagree'; readonly key: KeyPosition; readonly volts: readonly number[] }
  | { readonly kind: 'through a load'; readonly how: 'read it on' | 'read its drop'; readonly key: KeyPosition }
  | {
      readonly kind: 'wrong reference';
      readonly how: 'negative' | 'above the supply' | 'not live' | 'not proven constant' | 'both ways';
      readonly reading: Reading;
    }
  | { readonly kind: 'supply not measured' }
  | {
      readonly kind: 'no battery';
      readonly how: 'reads nothing' | 'too high at rest' | 'leads swapped';
      readonly key: KeyPosition;
      readonly millivolts: number;
    }
  | { readonly kind: 'leak'; readonly reading: Reading }
  | { readonly kind: 'forty-eight volts'; readonly reading: Reading }
  | {
      readonly kind: 'contradicts another wire';
      readonly how: 'falls';
      readonly reading: Reading;
      readonly holding: string;
    }
  | {
      readonly kind: 'contradicts another wire';
      readonly how: 'same pin';
      readonly other: string;
      readonly connector: string | null;
      readonly pin: string;
      readonly roles: readonly [WireRole, WireRole];
    }
  | { readonly kind: 'two constants'; readonly constants: readonly ComparedConstant[] };

/** Something a fitter must know about the readings of one wire (or of the whole job, point ''). */
export type Trap = TrapFacts & { readonly point: string };

/** The readings of a wire as a table shows them. */
export type TabledReadings = {
  /** in each key position the reading that counts: a plain one, else one against a live wire */
  readonly counts: ReadonlyMap<KeyPosition, Reading>;
  /** key-out readings that a longer wait supersedes */
  readonly superseded: readonly Reading[];
  /** read once more, against a live wire, with the lamps on, with the isolator open, or after joining; those under load stand apart */
  readonly besides: readonly Reading[];
};

export type WireEvidence = {
  readonly point: string;
  readonly colour: string | null;
  readonly stripe: string | null;
  readonly tests: readonly RoleTest[];
  readonly conclusion: Conclusion;
  /** the readings of the conclusion, or all plain ones of an open wire, in the order of a drive */
  readonly shown: readonly ShownReading[];
  readonly table: TabledReadings;
  readonly verdict: WireRole | null;
  readonly agreement: 'agreement' | 'not proven' | 'contradiction' | 'no verdict';
  readonly traps: readonly Trap[];
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
