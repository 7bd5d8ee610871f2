import { where } from '../evidence/key-words.ts';
import { writeVolts } from '../quantities/millivolts.ts';
import type { AnyRule } from './define-rule.ts';
import type { Rule, RuleHit } from './rule.ts';
import type { Message, Voice } from './rule-words.ts';

const listed = (words: readonly string[], last: string) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

/** English as rules speak it until every rule hands on kinds and figures. */
export const englishVoice: Voice = {
  volts: (millivolts) => `${writeVolts(millivolts)} V`,
  voltLimit: (millivolts) => `${millivolts / 1000} V`,
  decimal: (value) => String(Math.round(value * 1e6) / 1e6),
  day: (date) => date,
  where: (key) => where(key, { button: false, electric: false }),
  lead: (lead) => lead,
  role: (role) => role,
  wire: (evidence) => evidence.sentence,
  wanted: (reading) => reading?.sentence ?? 'Find another wire.',
  and: (words) => listed(words, 'and'),
  or: (words) => listed(words, 'or'),
};

/** A rule with its English said at once. */
export function inEnglish(rule: AnyRule): Rule {
  return {
    id: rule.id,
    group: rule.group,
    severity: rule.severity,
    source: rule.source,
    summary: rule.words.summary(englishVoice),
    why: rule.words.why,
    check: (facts) =>
      rule.check(facts).map((hit): RuleHit => {
        const say = rule.words.says[hit.says] as ((figures: unknown, voice: Voice) => Message) | undefined;
        if (say === undefined) throw new Error(`${rule.id} has no words for "${hit.says}"`);
        return {
          at: hit.at,
          says: hit.says,
          figures: hit.figures,
          ...say(hit.figures, englishVoice),
          ...(hit.severity === undefined ? {} : { severity: hit.severity }),
        };
      }),
    examples: rule.examples,
  };
}
