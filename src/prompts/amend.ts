import type { Job } from '../records/job.ts';
import { interview, questions } from './interview.ts';
import type { Around, Ask, Question } from './question.ts';

const wireOf = (id: string): number | null => {
  const match = /^wire-(\d+)$/.exec(id);
  return match === null ? null : Number(match[1]) - 1;
};

/** The parts of a job that can be answered anew: every question that applies to it, wires only as far as there are any. */
export function parts(job: Job): readonly string[] {
  return questions
    .filter((question) => question.applies(job))
    .map((question) => question.id)
    .filter((id) => (wireOf(id) ?? -1) < (job.probePoints ?? []).length);
}

// what the question would otherwise add to, taken away first; the record on disk is not touched meanwhile
function without(job: Job, id: string): Job {
  const wire = wireOf(id);
  if (wire !== null) return { ...job, probePoints: (job.probePoints ?? []).filter((_, index) => index !== wire) };
  if (id !== 'readings-after') return job;
  return {
    ...job,
    probePoints: (job.probePoints ?? []).map((point) => ({
      ...point,
      readings: point.readings.filter((reading) => reading.taken !== 'after'),
    })),
  };
}

/** The question as it is asked anew: a wire comes back to its own place in the list. */
function anew(question: Question): Question {
  const wire = wireOf(question.id);
  if (wire === null) return question;
  return {
    ...question,
    applies: () => true,
    ask: async (job, ask, around) => {
      const before = job.probePoints ?? [];
      const next = await question.ask(job, ask, around);
      const [added] = (next.probePoints ?? []).slice(before.length);
      return added === undefined ? next : { ...next, probePoints: before.toSpliced(wire, 0, added) };
    },
  };
}

/**
 * Asks one part of a job anew, and what applies only because of its new answers; nothing is kept until all of it is answered.
 * @param job the job as recorded
 * @param id the part, one of `parts`
 * @param ask how a prompt reaches a person
 * @param around what the questions may know
 * @returns the job with the part's new answers
 */
export async function amend(job: Job, id: string, ask: Ask, around: Around): Promise<Job> {
  const known = questions.filter((question) => question.applies(job) || question.id !== id).map((each) => each.id);
  const answered = known.filter((each) => each !== id);
  const asked = questions.map((question) => (question.id === id ? anew(question) : question));
  return interview({ ...without(job, id), interview: { answered } }, ask, around, () => {}, asked);
}
