import type { MeterProfile } from '../records/book.ts';
import { cranks } from '../records/cranks.ts';
import type { Job } from '../records/job.ts';
import { nominalVolts, systemFrom } from '../records/nominal-volts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Reading, SupplyReading } from '../records/reading.ts';
import { keyPositions, type WireRole } from '../records/wire-role.ts';
import { trapsBetweenWires } from './compare-wires.ts';
import { concludeRole, type Elimination } from './conclude-role.ts';
import type { Conclusion, Evidence, WireEvidence } from './evidence.ts';
import { trapsOfWire } from './find-traps.ts';
import { levelled } from './levels-at.ts';
import { shownReadings } from './shown-readings.ts';
import { supplyFaults } from './supply-faults.ts';
import { supplyByPosition, supplyFrom, supplyRange } from './supply-level.ts';
import { trapsOfSupply } from './supply-traps.ts';
import { retainedPowerSeconds, type Surroundings } from './surroundings.ts';
import { tabledReadings } from './tabled-readings.ts';
import { wantedReading } from './wanted-reading.ts';

/**
 * What each wire of a job is, concluded from the readings alone by elimination, or left open with the reading to take next.
 * @param job the job
 * @param meters the book's meters, the first being the usual one
 */
export function identifyWires(job: Job, meters: readonly MeterProfile[]): Evidence {
  const points = job.probePoints ?? [];
  const supply = supplyByPosition(job);
  const found = systemFrom(job);
  const alone = surroundingsOf(job, meters, supply, nominalVolts(job), []);
  // constants are proven without any other wire, so they are found first and may then serve as reference
  const constants = points.filter((point) => concludeRole(point, alone).proven === 'constant');
  const around = surroundingsOf(job, meters, withConstants(supply, constants, alone), alone.system, constants);
  const wires = points.map((point) => wireEvidence(point, around));
  return {
    systemVolts: found,
    supply,
    wires,
    traps: [...trapsOfSupply(job, supply, found, around), ...trapsBetweenWires(points, wires, around)],
  };
}

function surroundingsOf(
  job: Job,
  meters: readonly MeterProfile[],
  supply: Evidence['supply'],
  system: 12 | 24,
  constants: readonly ProbePoint[],
): Surroundings {
  const meterOf = (reading: Reading | SupplyReading) =>
    meters.find((meter) => meter.id === reading.meter) ?? meters[0] ?? null;
  const ranges = new Map(keyPositions.map((key) => [key, supplyRange(key, supply, system, meterOf)]));
  return {
    supply,
    rangeAt: (key) => ranges.get(key) ?? supplyRange(key, supply, system, meterOf),
    system,
    cranks: cranks(job.vehicle),
    nothingFollows: supplyFaults(supply, system).length > 0,
    retainedPowerSeconds: retainedPowerSeconds(job.vehicle),
    hasIsolator: job.vehicle.batteryIsolator,
    isConstant: (name) => constants.some((point) => point.name === name),
    meterOf,
  };
}

/** Where the supply itself was not measured, a proven constant shows it. */
function withConstants(
  supply: Evidence['supply'],
  constants: readonly ProbePoint[],
  around: Surroundings,
): Evidence['supply'] {
  const shown = constants
    .flatMap((point) => levelled(point, around))
    .filter((each) => each.void === null && !each.reading.loaded && supply[each.reading.key] === undefined)
    .map(({ reading }): SupplyReading => {
      const meter = reading.meter === undefined ? {} : { meter: reading.meter };
      return { key: reading.key, volts: reading.volts, at: 'known constant', steady: true, taken: 'before', ...meter };
    });
  return { ...supplyFrom(shown), ...supply };
}

function wireEvidence(point: ProbePoint, around: Surroundings): WireEvidence {
  const eliminated = concludeRole(point, around);
  const conclusion = conclusionOf(point, eliminated, around);
  const verdict = point.verdict ?? null;
  return {
    point: point.name,
    colour: point.colour ?? null,
    stripe: point.stripe ?? null,
    tests: eliminated.tests,
    conclusion,
    shown: shownReadings(point, conclusion, around),
    table: tabledReadings(point, conclusion),
    verdict,
    agreement: agreementOf(verdict, conclusion),
    traps: trapsOfWire(point, conclusion, around),
  };
}

function conclusionOf(point: ProbePoint, eliminated: Elimination, around: Surroundings): Conclusion {
  const { proven, remaining, tests } = eliminated;
  if (proven === null) return { kind: 'open', remaining, wants: wantedReading(point, eliminated, around) };
  // no test of a proven role fails, so these are the readings that it passed with
  const because = tests.filter((test) => test.role === proven).flatMap((test) => test.because);
  return { kind: 'concluded', role: proven, because: [...new Set(because)] };
}

function agreementOf(verdict: WireRole | null, conclusion: Conclusion): WireEvidence['agreement'] {
  if (verdict === null) return 'no verdict';
  if (conclusion.kind === 'concluded') return conclusion.role === verdict ? 'agreement' : 'contradiction';
  return conclusion.remaining.includes(verdict) || verdict === 'unknown' ? 'not proven' : 'contradiction';
}
