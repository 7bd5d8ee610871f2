import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAnswer } from '../../src/phone/read-answer.ts';

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
    ['no JSON', '{', /not JSON/],
    ['a list', [], /wrong/],
    ['no name', { ...sound, name: undefined }, /name is missing/],
    ['an empty name', { ...sound, name: '  ' }, /name/],
    ['a name of more than a line', { ...sound, name: 'Ada\nQuill' }, /name/],
    ['a name too long', { ...sound, name: 'a'.repeat(201) }, /name/],
    ['no answer', { ...sound, answer: undefined }, /answer/],
    ['another answer', { ...sound, answer: 'perhaps' }, /answer/],
    ['an answer only for the installer', { ...sound, answer: 'not available' }, /available/],
    ['a refusal without a reason', { answer: 'refuses', name: 'Ada Quill' }, /remark/],
    ['a remark promised and not given', { ...sound, answer: 'accepts with remark' }, /remark/],
    ['no stroke', { ...sound, strokes: [] }, /no stroke/],
    ['half a point', { ...sound, strokes: [[1, 2, 3]] }, /second number/],
    ['a point outside the box', { ...sound, strokes: [[1, 5001]] }, /leaves the box/],
    ['a point below zero', { ...sound, strokes: [[-1, 2]] }, /strokes/],
    ['a broken point', { ...sound, strokes: [[1.5, 2]] }, /strokes/],
    ['no size', { ...sound, strokesWidth: undefined }, /size/],
    ['too many strokes', { ...sound, strokes: many(201, 2) }, /strokes/],
    ['too long a stroke', { ...sound, strokes: many(1, 4002) }, /strokes/],
    ['too many points', { ...sound, strokes: many(11, 4000) }, /20000 points/],
    ['a field that does not belong', { ...sound, digest: 'a'.repeat(64) }, /digest/],
    ['a time of its own', { ...sound, signedAt: '2020-01-01T00:00' }, /signedAt/],
  ])('%s is refused in one sentence', (_, answer, wrong) => {
    const read = readAnswer(typeof answer === 'string' ? answer : JSON.stringify(answer));
    expect(read).toEqual({ wrong: expect.stringMatching(wrong) });
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
        if ('wrong' in read) return read.wrong.length > 0;
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
