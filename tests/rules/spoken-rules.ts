import { rules } from '../../src/rules/index.ts';
import type { JobFacts } from '../../src/rules/job-facts.ts';
import { saySummary, sayWhy } from '../../src/words/say-finding.ts';
import { terminalFinding } from '../../src/words/terminal-finding.ts';
import { terminalSpeech, terminalWords } from '../../src/words/terminal-speech.ts';

/** The rules with all that they say, in English, as the terminal says it. */
export const spokenRules = rules.map((rule) => ({
  ...rule,
  summary: saySummary(rule.id, terminalWords.rules, terminalSpeech({})),
  why: sayWhy(rule.id, terminalWords.rules),
  check: (facts: JobFacts) =>
    rule.check(facts).map(({ at, says, figures, severity }) => {
      const finding = { rule: rule.id, severity: severity ?? rule.severity, at, says, figures, source: rule.source };
      return terminalFinding(finding, facts.job.vehicle);
    }),
}));
