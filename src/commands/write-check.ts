import type { ExaminedJob } from '../operations/examine-job.ts';
import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { Reading } from '../records/reading.ts';
import type { Finding } from '../rules/finding.ts';
import { reasonGiven } from '../rules/open-findings.ts';
import { rootFindings } from '../rules/root-findings.ts';
import { sayNextStep } from '../words/say-next-step.ts';
import { terminalFinding } from '../words/terminal-finding.ts';
import { terminalSpeech } from '../words/terminal-speech.ts';
import { vehicleName } from '../words/vehicle-name.ts';
import { writeFinding } from './write-finding.ts';

/**
 * The whole check of one job, for the terminal: every wire with its readings and what to do next, the electrics, every finding, and whether it may be handed over.
 * @param examined the job with all that follows from it
 */
export function writeCheck(examined: ExaminedJob): string {
  const { job, findings } = examined;
  // what stops the handover stands first; within that, the order of the rules; what follows from it under it
  const ranked = rootFindings(job, findings).toSorted((one, other) => weight(one.finding) - weight(other.finding));
  const lines = ranked.map(({ finding, follows }) =>
    [
      writeFinding(terminalFinding(finding, job.vehicle), reasonGiven(job, finding)),
      ...(follows.length === 0 ? [] : [`    with it go: ${follows.map((each) => each.rule).join(', ')}`]),
    ].join('\n'),
  );
  return [
    `${job.id}  ${vehicleName(job.vehicle)}`,
    ...wireLines(examined),
    ...electricsLines(examined),
    ...(lines.length === 0 ? ['  No finding: every rule that applies holds.'] : lines),
    ...(lines.length === 0 ? [] : [`  ${stateOf(examined)}`]),
  ].join('\n');
}

const weight = ({ severity }: Finding) => ['block', 'reason', 'advise'].indexOf(severity);

function wireLines({ job, facts }: ExaminedJob): readonly string[] {
  const { wires, traps } = facts.evidence;
  const speech = terminalSpeech(job.vehicle);
  return [
    ...wires.flatMap((wire) => {
      const lead = job.connections?.find((made) => made.point === wire.point)?.lead ?? null;
      const next = sayNextStep(wire, lead, speech);
      const point = job.probePoints?.find((each) => each.name === wire.point);
      const used = wire.conclusion.kind === 'concluded' ? wire.conclusion.because : [];
      const others = (point?.readings ?? []).filter((reading) => !used.includes(reading)).map(writeReading);
      return [
        `  ${wire.point.padEnd(4)} ${speech.wire(wire)}`,
        ...(others.length === 0 ? [] : [`       ${used.length === 0 ? 'read' : 'also read'}: ${others.join(', ')}`]),
        ...(wire.agreement === 'not proven'
          ? [`       ${speech.evidence.next.notProven(speech.role(wire.verdict ?? 'unknown'))}`]
          : []),
        ...(next === null ? [] : [`       next: ${next}`]),
        ...wire.traps.map((trap) => `       mind: ${speech.trap(trap)}`),
      ];
    }),
    ...traps.map((trap) => `  mind: ${speech.trap(trap)}`),
  ];
}

/** A reading in short: "12.57 V (out, 30 s)". */
function writeReading(reading: Reading): string {
  const about = [
    reading.key,
    ...(reading.secondsWaited === undefined ? [] : [`${reading.secondsWaited} s`]),
    ...(reading.loaded ? ['loaded'] : []),
    ...(reading.reference === 'chassis' ? [] : [`against ${reading.referencePoint ?? reading.reference}`]),
    ...(reading.steady ? [] : ['wandering']),
  ];
  return `${writeVolts(millivoltsFromVolts(reading.volts))} V (${about.join(', ')})`;
}

function electricsLines({ electrics }: ExaminedJob): readonly string[] {
  const volts = (millivolts: number) => `${writeVolts(millivolts)} V`;
  const least = electrics.atDevice.toSorted((one, other) => one.millivolts - other.millivolts)[0];
  const window =
    electrics.supplyMillivoltsMin === null || electrics.supplyMillivoltsMax === null
      ? ''
      : ` (made for ${volts(electrics.supplyMillivoltsMin)} to ${volts(electrics.supplyMillivoltsMax)})`;
  const parts = [
    ...(least === undefined ? [] : [`least at the device ${volts(least.millivolts)}, ${least.key}${window}`]),
    ...(least === undefined || electrics.leadDropMillivolts === null
      ? []
      : [`leads lose ${electrics.leadDropMillivolts} mV of ${electrics.leadDropMillivoltsMax} mV allowed`]),
    ...(electrics.groundDropMillivolts === null ? [] : [`ground loses ${Math.abs(electrics.groundDropMillivolts)} mV`]),
    ...(electrics.standingDays === null
      ? []
      : [
          `the battery lasts ${electrics.standingDays} days standing, ${electrics.standingDaysWanted} wanted${electrics.batteryPercent === null ? '' : ` (${electrics.batteryPercent} % full at rest)`}`,
        ]),
  ];
  return parts.length === 0 ? [] : [`  volts and amperes: ${parts.join('; ')}`];
}

function stateOf({ job, findings, open }: ExaminedJob): string {
  const roots = rootFindings(job, open);
  const blocks = roots.filter(({ finding }) => finding.severity === 'block').length;
  const reasons = roots.length - blocks;
  if (open.length === 0)
    return `Nothing stops the handover (${findings.length} finding${findings.length === 1 ? '' : 's'} answered or for advice).`;
  return `Not ready: ${[
    ...(blocks > 0 ? [`${blocks} to correct`] : []),
    ...(reasons > 0 ? [`${reasons} to correct or to answer with a written reason`] : []),
  ].join(', ')}.`;
}
