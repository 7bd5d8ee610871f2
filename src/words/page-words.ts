/** Why the page does not take an answer. */
export type WrongAnswer =
  | {
      readonly kind:
        | 'not json'
        | 'name missing'
        | 'nobody signs'
        | 'remark missing'
        | 'no stroke'
        | 'size missing'
        | 'half a point'
        | 'outside the box'
        | 'another name'
        | 'no such page'
        | 'signed already'
        | 'another method'
        | 'another page'
        | 'another type'
        | 'not stored';
    }
  | { readonly kind: 'field'; readonly at: string }
  | { readonly kind: 'too many points'; readonly most: number }
  | { readonly kind: 'too large'; readonly most: number };

type PlainReason = Exclude<WrongAnswer['kind'], 'field' | 'too many points' | 'too large'>;

/** The words of the signing page itself, and its reasons for refusing an answer, in one language. */
export type PageWords = {
  readonly signing: string;
  readonly answer: string;
  readonly accepts: string;
  readonly acceptsWithRemark: string;
  readonly refuses: string;
  readonly remark: string;
  readonly name: string;
  readonly signature: string;
  readonly typed: string;
  readonly draw: string;
  readonly box: string;
  readonly undo: string;
  readonly clear: string;
  readonly send: string;
  readonly sending: string;
  readonly done: string;
  readonly withoutScript: string;
  readonly nameMissing: string;
  readonly answerMissing: string;
  readonly remarkMissing: string;
  readonly signatureMissing: string;
  readonly failed: string;
  readonly wrong: Readonly<Record<PlainReason, string>> & {
    readonly field: (at: string) => string;
    readonly 'too many points': (most: string) => string;
    readonly 'too large': (most: string) => string;
  };
};

/** Why the page does not take an answer, in one sentence. */
export function sayWrongAnswer(wrong: WrongAnswer, { wrong: words }: PageWords): string {
  if (wrong.kind === 'field') return words.field(wrong.at);
  if (wrong.kind === 'too many points' || wrong.kind === 'too large') return words[wrong.kind](String(wrong.most));
  return words[wrong.kind];
}
