import { describe, expect, test } from 'vitest';
import { fillTemplate } from '../../src/typesetting/markup/fill-template.ts';
import { parseMarkup } from '../../src/typesetting/markup/parse-markup.ts';

const template = [
  '<document title="t" lang="en" paper="a4" accent="#000000">',
  '<h1>{{title}}</h1>',
  '{{#if hasNotes}}',
  '<list kind="dash">',
  '  {{#each notes}}',
  '  <item>{{text}}</item>',
  '  {{/each}}',
  '</list>',
  '{{else}}',
  '<p>No notes.</p>',
  '{{/if}}',
  '{{! a remark of',
  'two lines }}',
  '{{~#each notes~}}',
  '<p>{{text}}</p>',
  '{{~/each}}',
  '<p>End of <b>all</b></p>',
  '</document>',
];
const views = [
  { title: 'T', hasNotes: true, notes: [{ text: 'one\ntwo' }, { text: 'three' }, { text: '<p>' }] },
  { title: 'T', hasNotes: false, notes: [] },
];
const told = (lines: readonly string[], view: object) => {
  try {
    parseMarkup(fillTemplate(lines.join('\n'), 'own.hbs', {}, view), 'own.hbs');
    return null;
  } catch (error) {
    return error as { what: string; where: string };
  }
};

describe('a mistake is told where it stands in the template', () => {
  test('the template itself is sound, and no tag keeps the mark', () => {
    for (const view of views) expect(told(template, view)).toBeNull();
    const document = parseMarkup(fillTemplate(template.join('\n'), 'own.hbs', {}, views[0] ?? {}), 'own.hbs');
    expect(JSON.stringify(document)).not.toContain('template-line');
  });

  test('a tag that does not exist, in any line, however often lists repeat it', () => {
    let found = 0;
    for (const view of views) {
      for (const [index, line] of template.entries()) {
        const tag = /<\/?(?:item|p|h1|b|list)\b/.exec(line);
        if (tag === null) continue;
        const wrong = template.with(index, line.replace(/<(item|p|h1|b|list)\b/, '<blink'));
        const mistake = told(wrong, view);
        if (mistake === null) continue;
        if (!mistake.what.includes('blink')) continue;
        expect(mistake.where).toBe(`own.hbs, line ${index + 1}`);
        found += 1;
      }
    }
    expect(found).toBe(8);
  });

  test.each([
    ['a tag not closed', 17, '<p>End of <b>all</p>', /<b> is not closed/],
    ['an attribute that does not exist', 6, '<item colour="red">{{text}}</item>', /no attribute "colour"/],
    ['a value that does not exist', 6, '<item>{{txet}}</item>', /txet/],
    ['a value that may not be printed so', 6, '<item>{{{text}}}</item>', /unescaped/],
    ['a value in the wrong place', 4, '<list kind="dash">loose words', /loose words/],
  ])('%s', (_, line, text, what) => {
    const mistake = told(template.with(line - 1, text), views[0] ?? {});
    expect(mistake?.what).toMatch(what);
    expect(mistake?.where).toBe(`own.hbs, line ${line}`);
  });
});
