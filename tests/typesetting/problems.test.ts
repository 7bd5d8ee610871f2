import { describe, expect, test } from 'vitest';
import { Problem } from '../../src/problem.ts';
import { print } from './print.ts';

const page = (inside: string, attributes = '') => `<document title="t" ${attributes}>\n${inside}\n</document>`;

const refused: readonly (readonly [string, string, string, string])[] = [
  ['an unknown tag', page('<div>x</div>'), 'There is no tag <div>.', 'line 2'],
  [
    'a tag named like something every object has',
    page('<constructor x="1"/>'),
    'There is no tag <constructor>.',
    'line 2',
  ],
  [
    'an attribute named like something every object has',
    page('<p constructor="1">x</p>'),
    'The tag <p> has no attribute "constructor".',
    'line 2',
  ],
  ['an unknown attribute', page('<p colour="red">x</p>'), 'The tag <p> has no attribute "colour".', 'line 2'],
  [
    'an unknown paper',
    page('<p>x</p>', 'paper="foolscap"'),
    'paper="foolscap" of <document> is not one of letter, a4',
    'line 1',
  ],
  [
    'an accent that is no colour',
    page('<p>x</p>', 'accent="blue"'),
    'accent="blue" of <document> is not a colour',
    'line 1',
  ],
  [
    'a length that is no number',
    page('<figure alt="a" width="wide" height="3"/>'),
    'width="wide" of <figure> is not a number',
    'line 2',
  ],
  [
    'a figure without its alternative',
    page('<figure width="3" height="3"/>'),
    '<figure> lacks its attribute "alt"',
    'line 2',
  ],
  [
    'text outside of a block',
    page('lost words'),
    'The text "lost words" may not stand directly inside <document>',
    'line',
  ],
  [
    'a cell outside of a row',
    page('<table widths="1"><tbody><td>x</td></tbody></table>'),
    '<td> may not stand inside <tbody>',
    'line 2',
  ],
  [
    'a row with too many cells',
    page('<table widths="1"><tbody><tr><td>x</td><td>y</td></tr></tbody></table>'),
    'more cells than the table has columns (1)',
    'line 2',
  ],
  ['a closing tag that nothing opened', page('<!-- </p> --><p>a</b>b</p>'), 'The tag </b> closes nothing', 'line 2'],
  [
    'a table with two heads',
    page('<table><thead><tr><th>x</th></tr></thead><thead><tr><th>y</th></tr></thead></table>'),
    'The table has two <thead>',
    'line 2',
  ],
  ['a head that skips a level', page('<h1>x</h1>\n<h3>y</h3>'), 'The head <h3> follows <h1>', 'line 3'],
  ['a tag that is not closed', page('<p>x'), '<p> is not closed', 'line'],
  [
    'a shape outside its figure',
    page('<figure alt="a" width="10" height="10"><line x1="0" y1="5" x2="30" y2="5"/></figure>'),
    'The <line> stands outside its figure',
    'line 2',
  ],
  [
    'a path that is none',
    page('<figure alt="a" width="10" height="10"><path d="0 0 L 3 3"/></figure>'),
    'The path data is not drawn',
    'line 2',
  ],
  ['a picture that is not there', page('<image src="cab" alt="a" width="10"/>'), 'There is no picture "cab"', 'line 2'],
  [
    'two fields of one name',
    page('<signature-field name="a" label="x"/><signature-field name="a" label="y"/>'),
    'two are named "a"',
    'line 2',
  ],
  [
    'a character no font has',
    page('<p>fitted by 漢</p>'),
    'The character "漢" (U+6F22) is in none',
    'line 2, <p>: "fitted by 漢"',
  ],
  ['a right-to-left character', page('<p>שלום</p>'), 'is written from right to left', 'line 2'],
  ["a missing sign in a fact's name", page('<facts><fact name="漢">x</fact></facts>'), '(U+6F22)', '<fact>: "漢"'],
  ['an unescaped value', page('<p>{{{x}}}</p>'), 'may not be printed unescaped', 'line 2'],
  ['a value the view lacks', page('<p>{{absent}}</p>'), 'cannot be filled', 'test.hbs'],
];

describe('a mistake in a template is named with its place', () => {
  test.each(refused)('%s', async (_, markup, what, where) => {
    const failure: unknown = await print(markup).then(
      () => null,
      (reason) => reason,
    );
    expect(failure).toBeInstanceOf(Problem);
    const problem = failure as Problem;
    expect(problem.what).toContain(what);
    expect(problem.where).toContain('test.hbs');
    expect(problem.where).toContain(where);
    expect(problem.whatToDo).not.toBe('');
  });
});
