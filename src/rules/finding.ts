/** How much weight a finding has: it stops the sheet, needs a written reason, or is printed, no more. */
export type Severity = 'block' | 'reason' | 'advise';

/** What a rule has to say of a job, as plain data. */
export type Finding = {
  readonly rule: string;
  readonly severity: Severity;
  /** the place in the job: a probe point, a lead, a panel; '' for the whole job */
  readonly at: string;
  /** which of the rule's messages */
  readonly says: string;
  /** the figures in it */
  readonly figures?: unknown;
  readonly source: string;
};
