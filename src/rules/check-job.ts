import type { Finding } from './finding.ts';
import { rules } from './index.ts';
import type { JobFacts } from './job-facts.ts';

/**
 * What every trade rule has to say of a job, in the order of the rules, as plain data.
 * @param facts the job and what is known around it
 */
export function checkJob(facts: JobFacts): readonly Finding[] {
  return rules.flatMap((rule) =>
    rule.check(facts).map(({ at, says, figures, severity }) => ({
      rule: rule.id,
      severity: severity ?? rule.severity,
      at,
      says,
      figures,
      source: rule.source,
    })),
  );
}
