import type { Job } from '../records/job.ts';
import { closingQuestions, deviceQuestions } from './ask-device.ts';
import { vehicleQuestions } from './ask-vehicle.ts';
import { wiringQuestions } from './ask-wiring.ts';
import { type Around, type Ask, GoBack, type Question } from './question.ts';

const isAfter = (question: Question) => question.id.endsWith('-after');

/** Every question in the order in which the work is done. */
export const questions: readonly Question[] = [
  ...vehicleQuestions.filter((question) => !isAfter(question)),
  ...deviceQuestions.filter((question) => question.id === 'device'),
  ...wiringQuestions,
  ...deviceQuestions.filter((question) => question.id !== 'device'),
  ...vehicleQuestions.filter(isAfter),
  ...closingQuestions,
];

/**
 * Asks every question of a job that was not asked yet and hands the job on after each answer.
 * @param begun the job so far
 * @param ask how a question reaches a person
 * @param around what the questions may know
 * @param save called after every answer
 * @returns the job with every question answered
 */
export async function interview(
  begun: Job,
  ask: Ask,
  around: Around,
  save: (job: Job) => void | Promise<void>,
): Promise<Job> {
  let job = begun;
  const answered = () => job.interview?.answered ?? [];
  for (;;) {
    const question = questions.find((each) => !answered().includes(each.id) && each.applies(job));
    if (question === undefined) return job;
    try {
      const next = await question.ask(job, ask, around);
      job = { ...next, interview: { answered: [...answered(), question.id] } };
    } catch (error) {
      if (!(error instanceof GoBack)) throw error;
      job = { ...job, interview: { answered: answered().slice(0, -1) } };
    }
    await save(job);
  }
}
