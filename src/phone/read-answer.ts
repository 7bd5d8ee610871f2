import { type Signature, signature } from '../records/job.ts';
import type { WrongAnswer } from '../words/page-words.ts';

/** What the customer sent: answer, name, remark, strokes. */
export type SignedAnswer = Pick<
  Signature,
  'answer' | 'name' | 'remark' | 'strokes' | 'strokesWidth' | 'strokesHeight'
> & { readonly name: string };

/** Points of all strokes together; a signature has some hundreds. */
const pointsMax = 20_000;

const sent = signature.pick({
  answer: true,
  name: true,
  remark: true,
  strokes: true,
  strokesWidth: true,
  strokesHeight: true,
});

/**
 * The customer's answer from the body of a request.
 * @param body the body's text
 * @returns the answer, or what is wrong with it
 */
export function readAnswer(body: string): SignedAnswer | { readonly wrong: WrongAnswer } {
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch {
    return { wrong: { kind: 'not json' } };
  }
  const result = sent.safeParse(value);
  if (!result.success) {
    const issue = result.error.issues[0];
    const at = issue?.code === 'unrecognized_keys' ? issue.keys.join(', ') : (issue?.path.join('.') ?? '');
    return { wrong: { kind: 'field', at } };
  }
  const { name, ...rest } = result.data;
  if (name === undefined) return { wrong: { kind: 'name missing' } };
  const wrong = wrongOf(rest);
  return wrong === null ? { ...rest, name } : { wrong };
}

function wrongOf(answer: Omit<SignedAnswer, 'name'>): WrongAnswer | null {
  const { strokes, strokesWidth, strokesHeight } = answer;
  if (answer.answer === 'not available') return { kind: 'nobody signs' };
  if (answer.answer !== 'accepts' && answer.remark === undefined) return { kind: 'remark missing' };
  if (strokes === undefined) return null;
  if (strokes.length === 0) return { kind: 'no stroke' };
  if (strokesWidth === undefined || strokesHeight === undefined) return { kind: 'size missing' };
  if (strokes.some((stroke) => stroke.length % 2 !== 0)) return { kind: 'half a point' };
  const numbers = strokes.reduce((sum, stroke) => sum + stroke.length, 0);
  if (numbers > 2 * pointsMax) return { kind: 'too many points', most: pointsMax };
  const inside = strokes.every((stroke) =>
    stroke.every((place, index) => place <= (index % 2 === 0 ? strokesWidth : strokesHeight)),
  );
  return inside ? null : { kind: 'outside the box' };
}
