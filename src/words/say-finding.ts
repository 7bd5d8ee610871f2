import type { Finding } from '../rules/finding.ts';
import type { Message } from '../rules/rule-words.ts';
import type { RulesInWords } from './rules-in-words.ts';
import type { Speech } from './speech.ts';

/** What a finding says: what is wrong with the figures, why it matters, what to do. */
export type SaidFinding = Message & { readonly why: string };

type AnyWords = {
  readonly summary: (speech: Speech) => string;
  readonly why: string;
  readonly says: Readonly<Record<string, (figures: unknown, speech: Speech) => Message>>;
};

/** A rule's words by its id, whatever its messages. */
function wordsOf(rules: RulesInWords, id: string): AnyWords {
  const found = (rules as unknown as Readonly<Record<string, AnyWords | undefined>>)[id];
  if (found === undefined) throw new Error(`no words for the rule "${id}"`);
  return found;
}

/**
 * A finding in words.
 * @param finding the finding
 * @param rules what the rules say in the reader's language
 * @param speech how facts are said about the vehicle
 */
export function sayFinding(finding: Finding, rules: RulesInWords, speech: Speech): SaidFinding {
  const { why, says } = wordsOf(rules, finding.rule);
  const say = says[finding.says];
  if (say === undefined) throw new Error(`${finding.rule} has no words for "${finding.says}"`);
  return { ...say(finding.figures, speech), why };
}

/**
 * What a rule says should hold.
 * @param id the rule's id
 * @param rules what the rules say in the reader's language
 * @param speech how facts are said
 */
export function saySummary(id: string, rules: RulesInWords, speech: Speech): string {
  return wordsOf(rules, id).summary(speech);
}

/** Why a rule matters, by its id. */
export function sayWhy(id: string, rules: RulesInWords): string {
  return wordsOf(rules, id).why;
}
