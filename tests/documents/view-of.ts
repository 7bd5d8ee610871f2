import { type HandoverInput, handoverView } from '../../src/documents/handover-view.ts';
import { workOutElectrics } from '../../src/electrics/work-out-electrics.ts';
import type { JobInput } from '../../src/records/job.ts';
import { checkJob } from '../../src/rules/check-job.ts';
import { rules } from '../../src/rules/index.ts';
import type { JobFacts } from '../../src/rules/job-facts.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';

/** The handover view of a change laid over the sound job, with all that follows from the record. */
export function viewOf(
  change: Partial<JobInput> = {},
  changedFacts: Partial<JobFacts> = {},
  changedInput: Partial<HandoverInput> = {},
) {
  const facts = soundFacts({ ...soundJob, ...change }, changedFacts);
  return handoverView({
    facts,
    findings: checkJob(facts),
    electrics: workOutElectrics(facts.job, facts.profile, facts.book),
    rulesChecked: rules.map(({ id, source }) => ({ id, source })),
    digest: 'ab'.repeat(32),
    ...changedInput,
  });
}

/** The sound job without some of its sections. */
export function without(...sections: readonly (keyof JobInput)[]): Partial<JobInput> {
  return Object.fromEntries(sections.map((section) => [section, undefined]));
}

/** Every string of a view, with its path. */
export function stringsOf(view: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof view === 'string') return [[path, view]];
  if (typeof view !== 'object' || view === null) return [];
  return Object.entries(view).flatMap(([name, each]) => stringsOf(each, path === '' ? name : `${path}.${name}`));
}

/** All that is said in a view, in one text. */
export function saidIn(view: unknown): string {
  return stringsOf(view)
    .map(([, text]) => text)
    .join('\n');
}
