import { ZodError } from 'zod';
import { type Job, job as jobRecord } from '../records/job.ts';
import { faultsOf } from '../records/read-record.ts';
import { closingQuestions } from './ask-closing.ts';
import { conditionQuestion } from './ask-condition.ts';
import { deviceQuestion, deviceWorks } from './ask-device.ts';
import { groundDrop, jointQuestions } from './ask-joints.ts';
import { panelsClosed, panelsOpened } from './ask-panels.ts';
import { photographsQuestion } from './ask-photographs.ts';
import { harnessQuestion, placementQuestion } from './ask-placement.ts';
import { signatureQuestion } from './ask-signature.ts';
import { vehicleQuestions } from './ask-vehicle.ts';
import { visitQuestions } from './ask-visit.ts';
import { loadedQuestions, wireQuestions } from './ask-wires.ts';
import { type Around, type Ask, GoBack, type Question } from './question.ts';
import { replaying } from './replaying.ts';

/** Every question in the order in which the work is done. */
export const questions: readonly Question[] = [
  ...visitQuestions,
  ...vehicleQuestions,
  conditionQuestion('before'),
  deviceQuestion,
  panelsOpened,
  ...wireQuestions,
  ...jointQuestions,
  placementQuestion,
  harnessQuestion,
  deviceWorks,
  ...loadedQuestions,
  groundDrop,
  conditionQuestion('after'),
  panelsClosed,
  photographsQuestion,
  ...closingQuestions,
  signatureQuestion,
];

/** The next question of a job, or undefined when all are answered. */
export const nextQuestion = (job: Job, all: readonly Question[] = questions): Question | undefined =>
  all.find((each) => !(job.interview?.answered ?? []).includes(each.id) && each.applies(job));

/** A question that was answered in this sitting: the job as it was before, and the answers given. */
type Answered = { readonly question: Question; readonly before: Job; readonly answers: readonly string[] };

/**
 * Asks every question of a job that was not asked yet and hands the job on after each answer.
 * Going back leads to the prompt before, within a question or in the one before it.
 * @param begun the job so far, with the answers of a question that was left half-way
 * @param ask how a prompt reaches a person
 * @param around what the questions may know
 * @param save called after every answer
 * @param all the questions, in their order
 * @returns the job with every question answered
 */
export async function interview(
  begun: Job,
  ask: Ask,
  around: Around,
  save: (job: Job) => void | Promise<void>,
  all: readonly Question[] = questions,
): Promise<Job> {
  const sitting: Answered[] = [];
  let job = begun;
  let offered: readonly string[] = [];
  for (;;) {
    const answered = job.interview?.answered ?? [];
    const question = nextQuestion(job, all);
    if (question === undefined) return job;
    const draft = job.interview?.draft;
    let answers: readonly string[] = draft?.question === question.id ? draft.answers : [];
    try {
      const keep = async (given: readonly string[]) => {
        answers = given;
        job = { ...job, interview: { answered, draft: { question: question.id, answers: [...given] } } };
        await save(job);
      };
      const before = job;
      const next = await reply(question, before, replaying(ask, answers, offered, keep), around);
      if (typeof next === 'string') {
        // what the record cannot hold is never kept: the same prompts come again, each with the answer that was given
        around.tell(`  ${next} Answer once more; what you gave is offered.`);
        job = { ...before, interview: { answered } };
        offered = answers;
      } else {
        sitting.push({ question, before, answers });
        job = { ...next, interview: { answered: [...answered, question.id] } };
        offered = [];
      }
    } catch (error) {
      if (!(error instanceof GoBack)) throw error;
      [job, offered] = backFrom(job, question, answers, sitting);
    }
    await save(job);
  }
}

// the job with the question's answers in it, or what is wrong with them
async function reply(question: Question, before: Job, ask: Ask, around: Around): Promise<Job | string> {
  try {
    const next = await question.ask(before, ask, around);
    const faults = faultsOf(jobRecord, { ...next, interview: undefined });
    return faults.length === 0 ? next : faults.map(({ field, what }) => `${field} ${what}.`).join(' ');
  } catch (error) {
    if (!(error instanceof ZodError)) throw error;
    return error.issues.map(({ path, message }) => `${path.join('.')} ${message}.`).join(' ');
  }
}

// one prompt back: within the question, else the last prompt of the question before
function backFrom(
  job: Job,
  question: Question,
  answers: readonly string[],
  sitting: Answered[],
): readonly [Job, readonly string[]] {
  const answered = job.interview?.answered ?? [];
  if (answers.length > 0) {
    const kept = answers.slice(0, -1);
    return [{ ...job, interview: { answered, draft: { question: question.id, answers: [...kept] } } }, answers];
  }
  const last = sitting.pop();
  if (last === undefined) return [{ ...job, interview: { answered: answered.slice(0, -1) } }, []];
  const kept = last.answers.slice(0, -1);
  const before = last.before.interview?.answered ?? [];
  return [
    { ...last.before, interview: { answered: before, draft: { question: last.question.id, answers: [...kept] } } },
    last.answers,
  ];
}
