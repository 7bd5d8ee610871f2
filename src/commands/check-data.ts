import type { Trap, WireEvidence } from '../evidence/evidence.ts';
import type { ExaminedJob } from '../operations/examine-job.ts';
import { openFindings, reasonGiven } from '../rules/open-findings.ts';
import { sayNextStep } from '../words/say-next-step.ts';
import { sayTest } from '../words/say-test.ts';
import type { Speech } from '../words/speech.ts';
import { terminalFinding } from '../words/terminal-finding.ts';
import { terminalSpeech } from '../words/terminal-speech.ts';

/**
 * One job of the document that `keyout check --json` prints; its shape is described in check-output.ts.
 * Fields are named one by one, so that nothing undescribed slips out.
 * @param examined the job with all that follows from it
 */
export function checkData(examined: ExaminedJob) {
  const { job, facts, findings, open, electrics } = examined;
  const { evidence } = facts;
  const speech = terminalSpeech(job.vehicle);
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
      wires: evidence.wires.map((wire) => wireData(examined, wire, speech)),
      traps: evidence.traps.map((trap) => trapData(trap, speech)),
    },
    electrics,
    findings: findings.map((finding) => {
      const answer = reasonGiven(job, finding);
      return { ...terminalFinding(finding, job.vehicle), answer, open: openFindings(job, [finding]).length > 0 };
    }),
    open: open.map((finding) => finding.rule),
  };
}

const trapData = (trap: Trap, speech: Speech) => ({
  kind: trap.kind,
  point: trap.point,
  sentence: speech.trap(trap),
});

function wireData({ job }: ExaminedJob, wire: WireEvidence, speech: Speech) {
  const lead = job.connections?.find((made) => made.point === wire.point)?.lead ?? null;
  const { conclusion } = wire;
  return {
    point: wire.point,
    lead,
    sentence: speech.wire(wire),
    next: sayNextStep(wire, lead, speech),
    verdict: wire.verdict,
    agreement: wire.agreement,
    conclusion:
      conclusion.kind === 'concluded'
        ? { kind: conclusion.kind, role: conclusion.role, because: conclusion.because }
        : { kind: conclusion.kind, remaining: conclusion.remaining, wants: wantsData(conclusion.wants, speech) },
    readings: job.probePoints?.find((each) => each.name === wire.point)?.readings ?? [],
    tests: wire.tests.map(({ role, test, result, because }) => ({
      role,
      test: sayTest(test, speech),
      result,
      because,
    })),
    traps: wire.traps.map((trap) => trapData(trap, speech)),
  };
}

type Wants = Extract<WireEvidence['conclusion'], { kind: 'open' }>['wants'];

function wantsData(wants: Wants, speech: Speech) {
  if (wants === null) return null;
  const { key, reference, loaded, lights, secondsWaited, expectedRemaining } = wants;
  const sentence = speech.wanted(wants);
  return { key, reference, loaded, lights, secondsWaited, expectedRemaining, sentence };
}
