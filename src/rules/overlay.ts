import type { DeviceLead } from '../records/connection.ts';
import type { JobInput } from '../records/job.ts';
import type { RuleExample } from './rule-example.ts';

type Change = RuleExample['change'];
type Made = NonNullable<JobInput['connections']>[number];
type Placed = NonNullable<JobInput['placement']>;
type Harness = NonNullable<JobInput['harness']>;

/** An example's change that replaces fields of the connection of one lead. */
export function withConnection(lead: DeviceLead, fields: Partial<Made>): Change {
  return (job) => ({
    ...job,
    connections: (job.connections ?? []).map((made) => (made.lead === lead ? { ...made, ...fields } : made)),
  });
}

/** An example's change that replaces fields of the placement; the job must have one. */
export function withPlacement(fields: Partial<Placed>): Change {
  return (job) => (job.placement === undefined ? job : { ...job, placement: { ...job.placement, ...fields } });
}

/** An example's change that replaces fields of the harness. */
export function withHarness(fields: Harness): Change {
  return (job) => ({ ...job, harness: { ...job.harness, ...fields } });
}
