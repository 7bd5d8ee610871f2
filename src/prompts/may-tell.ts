import type { Job } from '../records/job.ts';

/** Rules that speak of something asked late: the question after which each may be told. */
export const toldAfter: Readonly<Record<string, string>> = {
  'purchase-order-where-the-payer-needs-one': 'purchase-order',
  'device-is-active': 'device-works',
  'device-lamp-as-the-profile-says': 'device-works',
  'every-fastener-is-back': 'panels-closed',
  'plastics-not-over-tightened': 'panels-closed',
  'loaded-reading-taken': 'readings-after',
  'ground-drop-is-small': 'ground-drop',
  'ground-is-proven': 'ground-drop',
  'constant-is-proven': 'readings-after',
  'ignition-is-proven': 'readings-after',
  'supply-read-after': 'condition-after',
  'functions-work-again': 'condition-after',
  'warning-lamps-no-worse': 'condition-after',
  'photographs-are-present': 'photographs',
  'photographs-asked-for-are-present': 'photographs',
  'photographs-where-a-rule-asks': 'photographs',
  'no-fact-is-left-open': 'signature',
  'signature-or-reason': 'signature',
  'record-is-complete': 'signature',
};

/** True when the answers so far allow a rule to be heard: its subject was asked. */
export function mayTell(rule: string, job: Job): boolean {
  const question = toldAfter[rule];
  return question === undefined || (job.interview?.answered ?? []).includes(question);
}
