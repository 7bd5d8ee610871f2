import type { Job } from '../records/job.ts';
import type { Finding } from './finding.ts';

/** A finding with those that go away with it. */
export type RootFinding = { readonly finding: Finding; readonly follows: readonly Finding[] };

const provenness = [
  'readings-can-all-be-right',
  'ignition-holds-through-crank',
  'key-out-wait-is-long-enough',
  'verdict-matches-readings',
];

/** What each rule's finding on a wire may follow from: other findings on the same wire, the first cause first. */
const causes: Readonly<Record<string, readonly string[]>> = {
  'verdict-matches-readings': [
    'readings-can-all-be-right',
    'ignition-holds-through-crank',
    'key-out-wait-is-long-enough',
  ],
  'constant-is-proven': provenness,
  'ignition-is-proven': provenness,
  'ignition-holds-through-crank': ['readings-can-all-be-right'],
  'voltage-drop-is-small': ['readings-can-all-be-right'],
  // worked out from every reading of the feed, so a wrong one anywhere makes it
  'supply-within-device-window': ['readings-can-all-be-right'],
  'ground-is-proven': [...provenness, 'ground-drops-agree', 'ground-drop-is-small'],
};

function wireOf({ at }: Finding, job: Job): string {
  return job.connections?.find((made) => made.lead === at)?.point ?? at;
}

/**
 * Findings as faults: each that follows from another on the same wire is told under it, so that one fault is one finding.
 * @param job the job
 * @param findings its findings
 */
export function rootFindings(job: Job, findings: readonly Finding[]): readonly RootFinding[] {
  const isBattery = (finding: Finding) => finding.rule === 'readings-can-all-be-right' && finding.at === 'supply';
  const isOfNoWire = (finding: Finding) => finding.rule === 'supply-within-device-window';
  const causeOf = (finding: Finding): Finding | undefined =>
    (causes[finding.rule] ?? [])
      .map((rule) =>
        findings.find(
          (other) =>
            other.rule === rule &&
            other.severity === 'block' &&
            (isBattery(other) || isOfNoWire(finding) || wireOf(other, job) === wireOf(finding, job)),
        ),
      )
      .find((cause) => cause !== undefined);
  const rootOf = (finding: Finding): Finding => {
    const cause = causeOf(finding);
    return cause === undefined ? finding : rootOf(cause);
  };
  const roots = findings.filter((finding) => causeOf(finding) === undefined);
  return roots.map((root) => ({
    finding: root,
    follows: findings.filter((finding) => finding !== root && rootOf(finding) === root),
  }));
}
