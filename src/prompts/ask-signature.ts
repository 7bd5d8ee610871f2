import { clockOf, clockOrNothing, something } from './answers.ts';
import type { Question } from './question.ts';

const answers = ['accepts', 'accepts with remark', 'refuses', 'not available'] as const;

/** Hand over: what the customer says, who signs, or why nobody does. */
export const signatureQuestion: Question = {
  id: 'signature',
  // what was signed on the page or on paper is not put in other words here
  applies: (job) => job.signature?.digest === undefined,
  ask: async (job, ask, around) => {
    const answer = await ask.choose('The customer', answers, 'accepts');
    if (answer === 'not available') {
      const because = await ask.text('Why did nobody sign?', '', something);
      return { ...job, signature: { answer, noSignatureBecause: because } };
    }
    const name = await ask.text('Name of the signer', job.identity.customer?.contact ?? '', something);
    const at = await ask.text('Signed at', around.clock, clockOrNothing);
    const remark = answer === 'accepts' ? '' : await ask.text('Remark', '', something);
    return {
      ...job,
      signature: {
        answer,
        name,
        ...(at === '' ? {} : { signedAt: `${(job.labour?.end ?? job.day).slice(0, 10)}T${clockOf(at)}` }),
        ...(remark === '' ? {} : { remark }),
      },
    };
  },
};
