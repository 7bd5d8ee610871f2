import { Problem } from '../problem.ts';
import { rules } from '../rules/index.ts';
import type { AnyRule } from '../rules/rule.ts';
import { saySummary, sayWhy } from '../words/say-finding.ts';
import { terminalSpeech, terminalWords } from '../words/terminal-speech.ts';
import type { Command } from './command.ts';

/** `keyout rules [ID]`: the trade rules with their sources; with an id also why and the examples. */
export const rulesCommand: Command = {
  options: {},
  run: async (call, world) => {
    const id = call.words[0];
    if (id === undefined) {
      world.say(world.json ? JSON.stringify(rules.map(plainRule), null, 2) : ruleList());
      return 0;
    }
    const rule = rules.find((each) => each.id === id);
    if (rule === undefined) throw new Problem(`There is no rule "${id}".`, 'keyout rules', nearRules(id), 2);
    world.say(world.json ? JSON.stringify(plainRule(rule), null, 2) : wholeRule(rule));
    return 0;
  },
};

/** Rules whose id shares a word with what was typed. */
function nearRules(id: string): string {
  const words = id.toLowerCase().split(/[^a-z]+/);
  const near = rules.filter((rule) => words.some((word) => word.length > 3 && rule.id.includes(word)));
  const list = near.slice(0, 5).map((rule) => rule.id);
  return `${list.length === 0 ? '' : `Perhaps ${list.join(', ')}. `}\`keyout rules\` lists every id.`;
}

const summaryOf = ({ id }: AnyRule) => saySummary(id, terminalWords.rules, terminalSpeech({}));
const whyOf = ({ id }: AnyRule) => sayWhy(id, terminalWords.rules);

function plainRule(rule: AnyRule) {
  const { id, group, severity, source } = rule;
  return {
    id,
    group,
    severity,
    summary: summaryOf(rule),
    why: whyOf(rule),
    source,
    examples: rule.examples.map(({ name, finds }) => ({ name, finds })),
  };
}

function ruleList(): string {
  const groups = [...new Set(rules.map((rule) => rule.group))];
  return groups
    .map((group) =>
      [
        group,
        ...rules
          .filter((rule) => rule.group === group)
          .map(
            (rule) =>
              `  ${rule.severity.padEnd(6)}  ${rule.id}\n          ${summaryOf(rule)}\n          ${rule.source}`,
          ),
      ].join('\n'),
    )
    .join('\n\n');
}

function wholeRule(rule: AnyRule): string {
  const examples = rule.examples.map((example) =>
    [
      `  ${example.finds.length === 0 ? 'holds' : 'fails'}  ${example.name}`,
      ...example.finds.map(
        (found) =>
          `         ${found.severity}${found.at === '' ? '' : ` (${found.at})`}: ${found.what} ${found.whatToDo}`,
      ),
    ].join('\n'),
  );
  return [
    rule.id,
    `  ${summaryOf(rule)}`,
    '',
    `severity  ${rule.severity}`,
    `why       ${whyOf(rule)}`,
    `source    ${rule.source}`,
    '',
    'examples',
    ...examples,
  ].join('\n');
}
