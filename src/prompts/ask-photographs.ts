import { type Job, photographSubjects } from '../records/job.ts';
import { isWorked } from './kinds-of-visit.ts';
import type { Question } from './question.ts';

type Photograph = NonNullable<Job['photographs']>[number];

/** Photographs that lie in the job's folder: what each shows. */
export const photographsQuestion: Question = {
  id: 'photographs',
  applies: isWorked,
  ask: async (job, ask, around) => {
    const needed = around.payers().find((payer) => payer.id === job.identity.payer)?.needsPhotographs ?? [];
    const { folder } = around.photographs(job);
    await ask.text(
      `Photographs: put them into ${folder}${needed.length === 0 ? '' : ` (the payer asks for: ${needed.join(', ')})`}, then Enter`,
      '',
    );
    const photographs: Photograph[] = [];
    for (const file of around.photographs(job).files) {
      const shows = await ask.choose(`${file} shows`, [...photographSubjects, 'leave it out'] as const, 'other');
      if (shows === 'leave it out') continue;
      const caption = await ask.text('Caption', '');
      photographs.push({ file, shows, ...(caption === '' ? {} : { caption }) });
    }
    return { ...job, photographs };
  },
};
