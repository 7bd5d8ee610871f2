import type { Trap, WantedReading, WireEvidence } from '../evidence/evidence.ts';
import type { DeviceLead } from '../records/connection.ts';
import type { Gauge } from '../records/probe-point.ts';
import type { KeyPosition, WireRole } from '../records/wire-role.ts';

/** How figures and facts are written inside a rule's sentences: in the reader's language, for the vehicle at hand. */
export type Voice = {
  /** "12.40 V" from millivolts */
  readonly volts: (millivolts: number) => string;
  /** "0.5 V" from millivolts: a limit, without needless noughts */
  readonly voltLimit: (millivolts: number) => string;
  /** a number with the language's decimal sign, at most six decimals */
  readonly decimal: (value: number) => string;
  /** "2026-11-24" as the language writes a day */
  readonly day: (date: string) => string;
  /** "with the key on" */
  readonly where: (key: KeyPosition) => string;
  /** "supply", "ignition", "ground" */
  readonly lead: (lead: DeviceLead) => string;
  /** "constant" */
  readonly role: (role: WireRole) => string;
  /** what is known of a wire, one sentence with its readings */
  readonly wire: (evidence: WireEvidence) => string;
  /** the reading to take next, one sentence; null: find another wire */
  readonly wanted: (reading: WantedReading | null) => string;
  /** "a, b and c" */
  readonly and: (words: readonly string[]) => string;
  /** "a, b or c" */
  readonly or: (words: readonly string[]) => string;
  /** "18 AWG", "0.75 mm²" */
  readonly gauge: (gauge: Gauge) => string;
  /** a key position by its short name: "on" */
  readonly key: (key: KeyPosition) => string;
  /** "13.50 to 14.80 V" from millivolts */
  readonly voltRange: (least: number, most: number) => string;
  /** a whole number as it is written in a sentence: "ten" */
  readonly number: (value: number) => string;
  /** what a fitter must know about the readings, one sentence */
  readonly trap: (trap: Trap) => string;
};

/** What a finding says: what is wrong, with the figures, and what to do. */
export type Message = { readonly what: string; readonly whatToDo: string };

/** Everything a rule says in one language; `says` has a function of the figures for each way in which it can fail. */
export type RuleWords = {
  /** what should hold; a figure stands in it through its constant */
  readonly summary: (voice: Voice) => string;
  /** why it matters */
  readonly why: string;
  readonly says: Readonly<Record<string, (figures: never, voice: Voice) => Message>>;
};

type FiguresOf<Say> = Say extends () => Message
  ? { readonly figures?: never }
  : Say extends (figures: infer Figures, voice: Voice) => Message
    ? { readonly figures: Figures }
    : never;

/** One thing that a rule found, as plain data: where, which of its messages, and the figures in it. */
export type Hit<Words extends RuleWords> = {
  readonly [Name in keyof Words['says'] & string]: {
    readonly at: string;
    readonly says: Name;
    /** given where it differs from the rule's own */
    readonly severity?: 'block' | 'reason' | 'advise';
  } & FiguresOf<Words['says'][Name]>;
}[keyof Words['says'] & string];

/** The words of some rules in another language: the same messages of the same figures, complete by type. */
export type RuleWordsOf<Rules extends readonly { readonly id: string }[]> = {
  readonly [Each in Rules[number] as Each extends { readonly words: RuleWords } ? Each['id'] : never]: Each extends {
    readonly words: infer Words extends RuleWords;
  }
    ? {
        readonly summary: (voice: Voice) => string;
        readonly why: string;
        readonly says: { readonly [Name in keyof Words['says']]: Words['says'][Name] };
      }
    : never;
};
