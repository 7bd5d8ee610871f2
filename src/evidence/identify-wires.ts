import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { MeterProfile } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading } from '../records/reading.ts';
import { terminalNumbers, type WireRole } from '../records/wire-role.ts';
import type { Conclusion, Evidence, RoleTest, WireEvidence } from './evidence.ts';
import { trapsOfJob, trapsOfWire } from './find-traps.ts';
import { roleSignatures } from './role-signatures.ts';
import { supplyByPosition, systemFrom } from './supply-level.ts';
import { reversed, type Surroundings, testRoles, where } from './test-roles.ts';
import { wantedReading } from './wanted-reading.ts';

/**
 * What each wire of a job is, concluded from the readings alone by elimination, or left open with the reading to take next.
 * @param job the job
 * @param meters the book's meters, the first being the usual one
 */
export function identifyWires(job: Job, meters: readonly MeterProfile[]): Evidence {
  const supply = supplyByPosition(job);
  const found = systemFrom(supply);
  const around: Surroundings = {
    supply,
    system: found ?? job.vehicle.systemVolts ?? 12,
    isConstant: () => false,
    cranks: (job.vehicle.drive ?? 'combustion') === 'combustion',
    meterOf: (reading) => meters.find((meter) => meter.id === reading.meter) ?? meters[0] ?? null,
  };
  // constants are proven without any other wire, so they are found first and may then serve as reference
  const constants = new Set(
    (job.probePoints ?? [])
      .filter((point) => isConstant(wireEvidence(point, around).conclusion))
      .map((point) => point.name),
  );
  const known = { ...around, isConstant: (name: string) => constants.has(name) };
  const wires = (job.probePoints ?? []).map((point) => wireEvidence(point, known));
  return { systemVolts: found, supply, wires, traps: trapsOfJob(job, supply, found) };
}

const isConstant = (conclusion: Conclusion) => conclusion.kind === 'concluded' && conclusion.role === 'constant';

function wireEvidence(point: ProbePoint, around: Surroundings): WireEvidence {
  const tests = testRoles(point, around);
  const traps = trapsOfWire(point, around);
  const conclusion = concluded(
    point,
    tests,
    traps.some((trap) => trap.kind === 'signal only'),
    around,
  );
  const verdict = point.verdict ?? null;
  return {
    point: point.name,
    tests,
    conclusion,
    verdict,
    agreement: agreementOf(verdict, conclusion),
    traps,
    sentence: sentenceOf(point, conclusion),
  };
}

function concluded(
  point: ProbePoint,
  tests: readonly RoleTest[],
  signalOnly: boolean,
  around: Surroundings,
): Conclusion {
  const of = (role: WireRole) => tests.filter((test) => test.role === role);
  const remaining = roleSignatures
    .map((signature) => signature.role)
    .filter(
      (role) =>
        of(role).every((test) => test.result !== 'fails') &&
        !(signalOnly && (role === 'constant' || role === 'ignition')),
    );
  const proven = remaining.filter((role) => isProven(role, of(role), around));
  const only = proven[0];
  if (
    only !== undefined &&
    proven.length === 1 &&
    (only !== 'signal' || remaining.every((role) => role === 'signal' || role === 'lighting'))
  ) {
    const because = of(only)
      .filter((test) => test.result === 'passes')
      .flatMap((test) => test.because);
    return { kind: 'concluded', role: only, because: [...new Set(because)] };
  }
  const left: readonly WireRole[] =
    remaining.length === 0 || remaining.every((role) => role === 'lighting') ? [...remaining, 'unknown'] : remaining;
  return {
    kind: 'open',
    remaining: left,
    wants:
      point.readings.length === 0 && remaining.length === 0
        ? null
        : wantedReading(point.name, left, tests, around.cranks),
  };
}

function isProven(role: WireRole, tests: readonly RoleTest[], around: Surroundings): boolean {
  if (role === 'ground') return tests.some((test) => test.result === 'passes' && test.test.startsWith('shows'));
  if (role === 'signal') return tests.some((test) => test.result === 'passes');
  if (role === 'lighting') return false;
  const required = roleSignatures.find((each) => each.role === role)?.required ?? [];
  const instead = (key: string) => (key === 'on' ? ['on', 'running'] : [key]);
  return required
    .filter((key) => around.cranks || key !== 'crank')
    .every((key) =>
      instead(key).some((each) =>
        tests.some((test) => test.result === 'passes' && test.test.endsWith(where(each as typeof key))),
      ),
    );
}

function agreementOf(verdict: WireRole | null, conclusion: Conclusion): WireEvidence['agreement'] {
  if (verdict === null) return 'no verdict';
  if (conclusion.kind === 'concluded') return conclusion.role === verdict ? 'agreement' : 'contradiction';
  return conclusion.remaining.includes(verdict) || verdict === 'unknown' ? 'not proven' : 'contradiction';
}

function reading(each: Reading): string {
  const reference = reversed(each) ? ' against a live wire' : each.loaded ? ' loaded' : '';
  return `${writeVolts(millivoltsFromVolts(each.volts))} V ${where(each.key)}${reference}`;
}

function sentenceOf(point: ProbePoint, conclusion: Conclusion): string {
  const colour = [point.colour, point.stripe].filter((word) => word !== undefined).join(' with ');
  const name = `${colour === '' ? 'The wire' : `${colour[0]?.toUpperCase()}${colour.slice(1)}`} (${point.name})`;
  if (conclusion.kind === 'open') {
    const left = conclusion.remaining.filter((role) => role !== 'unknown');
    return left.length === 0
      ? `${name} fits no role: it reads like none of the feeds looked for.`
      : `${name} is not proven; it could still be ${left.join(' or ')}.`;
  }
  const terminal = terminalNumbers[conclusion.role];
  return `${name} is ${conclusion.role}${terminal === null ? '' : ` (terminal ${terminal})`}: ${conclusion.because.slice(0, 5).map(reading).join(', ')}.`;
}
