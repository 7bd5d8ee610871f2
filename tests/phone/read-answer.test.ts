import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAnswer } from '../../src/phone/read-answer.ts';
import { languages } from '../../src/records/language.ts';
import { sayWrongAnswer, type WrongAnswer } from '../../src/words/page-words.ts';
import { wordsIn } from '../../src/words/words-in.ts';

const drawn = {
  strokes: [
    [0, 0, 500, 300, 900, 100],
    [40, 40],
  ],
  strokesWidth: 10_000,
  strokesHeight: 5000,
};
const sound = { answer: 'accepts', name: 'Ada Quill', ...drawn };
const many = (count: number, length: number) => Array.from({ length: count }, () => Array(length).fill(1) as number[]);

describe('an answer', () => {
  test.each([
    ['drawn', sound],
    ['with the typed name alone', { answer: 'accepts', name: 'Ada Quill' }],
    ['with a remark', { ...sound, answer: 'accepts with remark', remark: 'Cable hangs.' }],
    ['a refusal with its reason', { answer: 'refuses', name: 'Ada Quill', remark: 'Lamp is on.' }],
    ['of as many points as are read', { ...sound, strokes: many(10, 4000) }],
  ])('%s is taken as it was sent', (_, answer) => {
    expect(readAnswer(JSON.stringify(answer))).toEqual(answer);
  });

  test.each([
    ['no JSON', '{', { kind: 'not json' }],
    ['a list', [], { kind: 'field', at: '' }],
    ['no name', { ...sound, name: undefined }, { kind: 'name missing' }],
    ['an empty name', { ...sound, name: '  ' }, { kind: 'field', at: 'name' }],
    ['a name of more than a line', { ...sound, name: 'Ada\nQuill' }, { kind: 'field', at: 'name' }],
    ['a name too long', { ...sound, name: 'a'.repeat(201) }, { kind: 'field', at: 'name' }],
    ['no answer', { ...sound, answer: undefined }, { kind: 'field', at: 'answer' }],
    ['another answer', { ...sound, answer: 'perhaps' }, { kind: 'field', at: 'answer' }],
    ['an answer only for the installer', { ...sound, answer: 'not available' }, { kind: 'nobody signs' }],
    ['a refusal without a reason', { answer: 'refuses', name: 'Ada Quill' }, { kind: 'remark missing' }],
    ['a remark promised and not given', { ...sound, answer: 'accepts with remark' }, { kind: 'remark missing' }],
    ['no stroke', { ...sound, strokes: [] }, { kind: 'no stroke' }],
    ['half a point', { ...sound, strokes: [[1, 2, 3]] }, { kind: 'half a point' }],
    ['a point outside the box', { ...sound, strokes: [[1, 5001]] }, { kind: 'outside the box' }],
    ['a point below zero', { ...sound, strokes: [[-1, 2]] }, { kind: 'field', at: 'strokes.0.0' }],
    ['a broken point', { ...sound, strokes: [[1.5, 2]] }, { kind: 'field', at: 'strokes.0.0' }],
    ['no size', { ...sound, strokesWidth: undefined }, { kind: 'size missing' }],
    ['too many strokes', { ...sound, strokes: many(201, 2) }, { kind: 'field', at: 'strokes' }],
    ['too long a stroke', { ...sound, strokes: many(1, 4002) }, { kind: 'field', at: 'strokes.0' }],
    ['too many points', { ...sound, strokes: many(11, 4000) }, { kind: 'too many points', most: 20_000 }],
    ['a field that does not belong', { ...sound, digest: 'a'.repeat(64) }, { kind: 'field', at: 'digest' }],
    ['a time of its own', { ...sound, signedAt: '2020-01-01T00:00' }, { kind: 'field', at: 'signedAt' }],
  ])('%s is refused with its reason', (_, answer, wrong) => {
    const read = readAnswer(typeof answer === 'string' ? answer : JSON.stringify(answer));
    expect(read).toEqual({ wrong });
    // in every language it is one sentence
    for (const language of languages)
      expect(sayWrongAnswer(wrong as WrongAnswer, wordsIn(language).page)).toMatch(/^\p{Lu}.*\.$/u);
  });

  test('whatever is sent, the answer is read or refused, and what is read stays inside its box', () => {
    const strokes = fc.array(fc.array(fc.integer({ min: -5, max: 12_000 }), { maxLength: 12 }), { maxLength: 6 });
    const near = fc.record(
      {
        answer: fc.constantFrom('accepts', 'accepts with remark', 'refuses', 'not available', 7),
        name: fc.oneof(fc.string(), fc.constant('Ada')),
        remark: fc.string(),
        strokes,
        strokesWidth: fc.integer({ min: -1, max: 11_000 }),
        strokesHeight: fc.integer({ min: -1, max: 11_000 }),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.oneof(near, fc.jsonValue()), (sent) => {
        const read = readAnswer(JSON.stringify(sent));
        if ('wrong' in read) return sayWrongAnswer(read.wrong, wordsIn('en').page).length > 0;
        return (read.strokes ?? []).every((stroke) =>
          stroke.every(
            (place, index) => place >= 0 && place <= ((index % 2 === 0 ? read.strokesWidth : read.strokesHeight) ?? -1),
          ),
        );
      }),
      { numRuns: 500 },
    );
  });
});
