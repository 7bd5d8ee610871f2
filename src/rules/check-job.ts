import { rules } from './index.ts';
import type { Finding, JobFacts } from './rule.ts';

/**
 * What every trade rule has to say of a job, in the order of the rules.
 * @param facts the job and what is known around it
 */
export function checkJob(facts: JobFacts): readonly Finding[] {
  return rules.flatMap((rule) =>
    rule.check(facts).map((hit) => ({
      rule: rule.id,
      severity: hit.severity ?? rule.severity,
      at: hit.at,
      what: hit.what,
      why: rule.why,
      whatToDo: hit.whatToDo,
      source: rule.source,
      ...(hit.says === undefined ? {} : { says: hit.says, figures: hit.figures }),
    })),
  );
}
