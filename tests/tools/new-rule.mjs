// Writes the file of a new trade rule and its entry in the list of its group: npm run new-rule NAME -- --group wiring
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';

const { values, positionals } = parseArgs({
  options: { group: { type: 'string' }, root: { type: 'string', default: path.resolve(import.meta.dirname, '../..') } },
  allowPositionals: true,
});
const rules = path.join(values.root, 'src/rules');
const groups = readdirSync(rules, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);
const [name = ''] = positionals;

function refuse(what, toDo) {
  console.error(`${what}\n  to do: ${toDo}`);
  process.exit(2);
}

if (!/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(name))
  refuse(
    `"${name}" is no name for a rule.`,
    'Name what should hold, in small letters: npm run new-rule splice-is-tied -- --group workmanship',
  );
if (!groups.includes(values.group))
  refuse(`There is no group "${values.group ?? ''}".`, `Add -- --group with one of ${groups.join(', ')}.`);
if (groups.some((group) => existsSync(path.join(rules, group, `${name}.ts`))))
  refuse(`There is a rule "${name}" already.`, 'Choose another name, or change that rule.');

const identifier = name.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase());
const file = path.join(rules, values.group, `${name}.ts`);
const list = path.join(rules, values.group, `${values.group}-rules.ts`);

writeFileSync(
  file,
  `import { defineRule } from '../define-rule.ts';

const words = {
  summary: () => 'TODO: what should hold, in one sentence.',
  why: 'TODO: what happens to the vehicle or its people otherwise.',
  says: {
    'not so': (vehicle: { year: number }) => ({
      what: \`TODO: what was found, with its figure (\${vehicle.year}).\`,
      whatToDo: 'TODO: what puts it right.',
    }),
  },
};

/** TODO: what should hold, in one sentence. */
export const ${identifier} = defineRule({
  id: '${name}',
  group: '${values.group}',
  severity: 'advise',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { year } = job.vehicle;
    return year === undefined || year >= 2000 ? [] : [{ at: 'vehicle', says: 'not so', figures: { year } }];
  },
  examples: [
    { name: 'TODO: one that holds', change: (job) => job, finds: [] },
    {
      name: 'TODO: one that fails',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, year: 1999 } }),
      finds: [
        {
          at: 'vehicle',
          severity: 'advise',
          what: 'TODO: what was found, with its figure (1999).',
          whatToDo: 'TODO: what puts it right.',
        },
      ],
    },
  ],
});
`,
);
const before = readFileSync(list, 'utf8');
const entry = `import { ${identifier} } from './${name}.ts';\n`;
writeFileSync(list, `${entry}${before.replace(/\n\] as const;/, `\n  ${identifier},\n] as const;`)}`);
console.log(
  [
    `Written: ${path.relative(values.root, file)}, and its entry in ${path.relative(values.root, list)}.`,
    'Now write the rule and its words; `npm run types` then names each language that lacks them (src/words/LANGUAGE/rules).',
    '`npx biome check --write src` puts the import in its place; `npx vitest run tests/rules tests/words` runs the examples.',
  ].join('\n'),
);
