import { type Signature, signature } from '../records/job.ts';

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
 * @returns the answer, or one sentence about what is wrong with it
 */
export function readAnswer(body: string): SignedAnswer | { readonly wrong: string } {
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch {
    return { wrong: 'The answer is not JSON.' };
  }
  const result = sent.safeParse(value);
  if (!result.success) {
    const issue = result.error.issues[0];
    return { wrong: `The answer is wrong at ${issue?.path.join('.') || 'its whole'}: ${issue?.message ?? ''}.` };
  }
  const { name, ...rest } = result.data;
  if (name === undefined) return { wrong: 'The name is missing.' };
  const wrong = wrongOf(rest);
  return wrong === null ? { ...rest, name } : { wrong };
}

function wrongOf(answer: Omit<SignedAnswer, 'name'>): string | null {
  const { strokes, strokesWidth, strokesHeight } = answer;
  if (answer.answer === 'not available') return 'Whoever signs is available.';
  if (answer.answer !== 'accepts' && answer.remark === undefined) return 'The remark is missing.';
  if (strokes === undefined) return null;
  if (strokes.length === 0) return 'The drawn signature has no stroke.';
  if (strokesWidth === undefined || strokesHeight === undefined) return 'The size of the drawn signature is missing.';
  if (strokes.some((stroke) => stroke.length % 2 !== 0)) return 'A stroke has a point without its second number.';
  const numbers = strokes.reduce((sum, stroke) => sum + stroke.length, 0);
  if (numbers > 2 * pointsMax) return `The drawn signature has more than ${pointsMax} points.`;
  const inside = strokes.every((stroke) =>
    stroke.every((place, index) => place <= (index % 2 === 0 ? strokesWidth : strokesHeight)),
  );
  return inside ? null : 'A stroke leaves the box it was drawn in.';
}
