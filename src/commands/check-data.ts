import type { Trap, WireEvidence } from '../evidence/evidence.ts';
import type { ExaminedJob } from '../operations/examine-job.ts';
import { openFindings, reasonGiven } from '../rules/open-findings.ts';
import { nextStep } from './next-step.ts';

/**
 * One job of the document that `keyout check --json` prints; its shape is described in check-output.ts.
 * Fields are named one by one, so that nothing undescribed slips out.
 * @param examined the job with all that follows from it
 */
export function checkData(examined: ExaminedJob) {
  const { job, facts, findings, open, electrics } = examined;
  const { evidence } = facts;
  return {
    job: job.id,
    vehicle: {
      vin: job.vehicle.vin ?? null,
      plate: job.vehicle.plate ?? null,
      unitNumber: job.vehicle.unitNumber ?? null,
    },
    mayBeHandedOver: open.length === 0,
    evidence: {
      systemVolts: evidence.systemVolts,
      supply: evidence.supply,
      wires: evidence.wires.map((wire) => wireData(examined, wire)),
      traps: evidence.traps.map(trapData),
    },
    electrics,
    findings: findings.map(({ rule, severity, at, what, why, whatToDo, source }) => ({
      rule,
      severity,
      at,
      what,
      why,
      whatToDo,
      source,
      answer: reasonGiven(job, { rule, severity, at, what, why, whatToDo, source }),
      open: openFindings(job, [{ rule, severity, at, what, why, whatToDo, source }]).length > 0,
    })),
    open: open.map((finding) => finding.rule),
  };
}

const trapData = ({ kind, point, sentence }: Trap) => ({ kind, point, sentence });

function wireData({ job }: ExaminedJob, wire: WireEvidence) {
  const lead = job.connections?.find((made) => made.point === wire.point)?.lead ?? null;
  const { conclusion } = wire;
  return {
    point: wire.point,
    lead,
    sentence: wire.sentence,
    next: nextStep(wire, lead),
    verdict: wire.verdict,
    agreement: wire.agreement,
    conclusion:
      conclusion.kind === 'concluded'
        ? { kind: conclusion.kind, role: conclusion.role, because: conclusion.because }
        : { kind: conclusion.kind, remaining: conclusion.remaining, wants: wantsData(conclusion.wants) },
    readings: job.probePoints?.find((each) => each.name === wire.point)?.readings ?? [],
    tests: wire.tests.map(({ role, test, result, because }) => ({ role, test, result, because })),
    traps: wire.traps.map(trapData),
  };
}

type Wants = Extract<WireEvidence['conclusion'], { kind: 'open' }>['wants'];

function wantsData(wants: Wants) {
  if (wants === null) return null;
  const { key, reference, loaded, lights, secondsWaited, expectedRemaining, sentence } = wants;
  return { key, reference, loaded, lights, secondsWaited, expectedRemaining, sentence };
}
