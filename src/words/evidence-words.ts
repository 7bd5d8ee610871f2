import type { ShownReading, TestKind, TrapFacts } from '../evidence/evidence.ts';
import type { KeyName } from './key-words.ts';

type Facts<Kind extends TrapFacts['kind']> = Extract<TrapFacts, { kind: Kind }>;
type How<Kind extends 'isolator side' | 'through a load' | 'wrong reference'> = Facts<Kind>['how'];

/** A wire by its point and colour. */
export type NamedWire = { readonly point: string; readonly colour: string | null; readonly stripe: string | null };

/** Every sentence about readings and what they prove, in one language; what goes in is worded and formatted already. */
export type EvidenceWords = {
  /** "with the key out", in the middle of a sentence */
  readonly where: Readonly<Record<KeyName, string>>;
  /** what a waiting time is counted from: "key out", "locking the vehicle" */
  readonly endOfDrive: { readonly key: string; readonly button: string };
  readonly seconds: (seconds: string) => string;
  readonly minutes: (minutes: string) => string;
  readonly number: (value: number) => string;
  readonly voltRange: (least: string, most: string) => string;
  /** "Red with white (P1)" */
  readonly wire: (wire: NamedWire) => string;
  readonly wireIs: (wire: string, role: string, terminal: string | null, proof: string) => string;
  readonly signalProof: (readings: string) => string;
  readonly fitsNoRole: (wire: string, readings: string) => string;
  readonly nothingRuledOut: (wire: string) => string;
  readonly readsLike: (wire: string, role: string) => string;
  readonly couldBe: (wire: string, roles: string, orNowhere: boolean) => string;
  readonly shows: Readonly<Record<ShownReading['shows'], string>>;
  readonly lamps: Readonly<Record<'on' | 'off', string>>;
  /** goes on after a key position: "and the isolator open" */
  readonly isolatorOpen: string;
  /** goes on after a key position: "against a live wire" */
  readonly blackOnLive: string;
  readonly after: (volts: string, wait: string) => string;
  readonly loaded: (volts: string) => string;
  readonly dropAt: (volts: string, milliamps: string, where: string) => string;
  readonly againstLive: (volts: string, where: string) => string;
  readonly wants: {
    readonly again: string;
    readonly toProve: (role: string) => string;
    readonly wouldRemain: (expected: string, possible: string) => string;
    readonly reversed: (point: string, where: string, count: string) => string;
    readonly read: (reading: {
      readonly point: string;
      readonly where: string;
      readonly lamps: boolean;
      /** true: with a test lamp or the device drawing on it */
      readonly loaded: boolean;
      /** null: no wait */
      readonly wait: { readonly minutes: string; readonly from: string; readonly isolatorClosed: boolean } | null;
      readonly count: string;
    }) => string;
  };
  readonly next: {
    readonly ruledOut: (verdict: string, found: string | null, lead: string | null) => string;
    readonly record: (role: string) => string;
    readonly notProven: (verdict: string) => string;
  };
  readonly test: Readonly<Record<Exclude<TestKind['kind'], 'reads'>, string>> & {
    readonly reads: (level: 'supply' | 'nothing', where: string) => string;
  };
  readonly trap: {
    readonly delayedPower: (trap: { point: string; volts: string; wait: string; from: string }) => string;
    readonly retainedPower: (trap: {
      point: string;
      volts: string;
      wait: string | null;
      from: string;
      minutes: string;
    }) => string;
    readonly readsLow: (trap: {
      point: string;
      volts: string;
      where: string;
      supply: string | null;
      running: boolean;
    }) => string;
    readonly dropsInCrank: (point: string) => string;
    readonly signalOnly: (trap: { point: string; unloaded: string; loaded: string; where: string }) => string;
    readonly ghostVolts: (point: string, volts: string | null) => string;
    readonly averageOfASignal: (trap: { point: string; volts: string; where: string; twisted: boolean }) => string;
    readonly twistedPair: (point: string) => string;
    readonly halfTheSupply: (point: string, volts: string) => string;
    readonly isolatorSide: Readonly<Record<How<'isolator side'>, (point: string, volts: string) => string>>;
    readonly overVoltage: (point: string | null, volts: string, where: string) => string;
    readonly systemDiffers: (found: string, recorded: string) => string;
    readonly unsteady: (point: string | null, where: string) => string;
    readonly disagree: (point: string | null, volts: string, where: string) => string;
    readonly throughALoad: Readonly<
      Record<How<'through a load'>, (point: string, where: string, on: string) => string>
    >;
    readonly wrongReference: Readonly<
      Record<
        How<'wrong reference'>,
        (trap: { point: string; volts: string; where: string; other: string | null }) => string
      >
    >;
    readonly supplyNotMeasured: string;
    readonly noBattery: Readonly<
      Record<Extract<TrapFacts, { kind: 'no battery' }>['how'], (volts: string, where: string) => string>
    >;
    readonly leak: (point: string, volts: string, where: string) => string;
    readonly fortyEightVolts: (point: string, volts: string) => string;
    readonly falls: (trap: { point: string; volts: string; where: string; holding: string }) => string;
    readonly samePin: (trap: {
      point: string;
      other: string;
      connector: string | null;
      pin: string;
      roles: readonly [string, string];
    }) => string;
    readonly constant: (constant: {
      point: string;
      wanders: boolean;
      lost: string;
      amperes: string | null;
      switched: boolean;
    }) => string;
    readonly constants: (count: string, said: string, best: string) => string;
  };
};
