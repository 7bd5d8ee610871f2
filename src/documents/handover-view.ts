import type { Electrics } from '../electrics/electrics.ts';
import { writeVolts } from '../quantities/millivolts.ts';
import type { Condition } from '../records/vehicle.ts';
import { reasonGiven } from '../rules/open-findings.ts';
import type { Finding, JobFacts } from '../rules/rule.ts';
import { placementPlan } from './placement-plan.ts';
import { readingsTable } from './readings-table.ts';
import { safetyNotes } from './safety-notes.ts';
import { summarySentences } from './summary-sentences.ts';
import { wiringFigure } from './wiring-figure.ts';
import { vehicleInWords, volts, wirePlace, writeDate, writeLength, writeWhole } from './write-facts.ts';

export type HandoverInput = {
  readonly facts: JobFacts;
  readonly findings: readonly Finding[];
  readonly electrics: Electrics;
  readonly rulesChecked: readonly { readonly id: string; readonly summary: string; readonly source: string }[];
  /** calendar date printed in the head */
  readonly printedOn: string;
  /** SHA-256 of the record */
  readonly digest: string;
};

/** Titles of publications inside a rule's source. */
const publication =
  /\d+ CFR \d+(?:\.\d+)?|\d+ CCR \d+|\d+ USC \d+|FAA AC [\d.]+-\w+|DIN \d+|ISO(?:\/IEC)? [\d-]*\d|3GPP TS [\d.]*\d|SAE J\d+|UNECE R\d+|FMVSS \d+/g;
const none = 'none';
const known = (value: string | undefined) => value ?? '–';

function condition(state: Condition | undefined) {
  return {
    lamps: state === undefined ? '–' : state.warningLamps.join(', ') || none,
    functions: state === undefined ? '–' : state.functionsNotWorking.join(', ') || none,
    rest: state?.restVolts === undefined ? '–' : `${volts(state.restVolts)} V`,
    charging: state?.chargingVolts === undefined ? '–' : `${volts(state.chargingVolts)} V`,
  };
}

/** Everything the handover sheet says, worded and formatted: strings, booleans and lists only. */
export function handoverView(input: HandoverInput) {
  const { facts, findings, electrics, digest } = input;
  const { job, book, profile, payer, evidence } = facts;
  const { identity, vehicle } = job;
  const connections = job.connections ?? [];
  const placement = job.placement;
  const signature = job.signature;
  const fasteners = (job.panels ?? []).map((panel) => ({
    text: `${panel.name}: ${panel.out} × ${panel.fastener} out, ${panel.in ?? 'not counted'} back in`,
  }));
  const reasons = findings
    .filter((finding) => finding.severity === 'reason')
    .map((finding) => ({
      what: finding.what,
      reason: reasonGiven(job, finding) ?? 'none given',
      source: finding.source,
    }));
  const notes = safetyNotes(job);
  return {
    paper: book.paper,
    accent: book.accent,
    language: book.language,
    business: book.business.name,
    businessLine: [
      book.business.address.lines.join(', '),
      book.business.address.city,
      book.business.phone,
      book.business.email,
    ]
      .filter((word) => word !== undefined)
      .join(' · '),
    job: job.id,
    day: writeDate(job.day, book.locale),
    place: known(identity.place),
    visit: identity.visit ?? 'visit',
    customer: known(identity.customer?.name),
    orderedBy: known(payer?.name),
    purchaseOrder: known(identity.purchaseOrder),
    installer: identity.installer ?? book.business.installer,
    vehicle: vehicleInWords(vehicle),
    vin: known(vehicle.vin),
    plate: known(vehicle.plate),
    unit: known(vehicle.unitNumber),
    odometer:
      vehicle.odometer === undefined
        ? '–'
        : `${writeWhole(vehicle.odometer.value, book.locale)} ${vehicle.odometer.unit}`,
    system:
      vehicle.systemVolts === undefined ? '–' : `${vehicle.systemVolts} V, ${vehicle.drive ?? 'drive not recorded'}`,
    hasDevice: job.device !== undefined,
    device: profile === null ? '–' : `${profile.name}${profile.maker === undefined ? '' : `, ${profile.maker}`}`,
    serial: known(job.device?.serial),
    imei: known(job.device?.imei),
    summary: summarySentences(job, profile, book).join(' '),
    hasConnections: connections.length > 0,
    wiring: wiringFigure(job, book),
    hasPlacement: placement !== undefined,
    plan: placementPlan(placement?.zone ?? 'dash centre'),
    zone: placement?.zone ?? '',
    surface: placement?.surface ?? '',
    fixing:
      placement === undefined
        ? ''
        : `${placement.fixing}${placement.fixingPoints === undefined ? '' : `, ${placement.fixingPoints} points`}`,
    wasWorked: identity.visit !== 'wasted visit',
    before: condition(job.before),
    after: condition(job.after),
    hasFasteners: fasteners.length > 0,
    fasteners,
    hasNotes: notes.length > 0,
    notes: notes.map((text) => ({ text })),
    hasRemarks: job.notes !== undefined && job.notes !== '',
    remarks: job.notes ?? '',
    hasReasons: reasons.length > 0,
    reasons,
    hasAdvice: findings.some((finding) => finding.severity === 'advise'),
    advice: findings
      .filter((finding) => finding.severity === 'advise')
      .map((finding) => ({ text: `${finding.what} ${finding.whatToDo}` })),
    signed: signature !== undefined && signature.answer !== 'not available',
    answer: signature?.answer ?? 'not signed',
    signedBy: known(signature?.name),
    signedAt:
      signature?.signedAt === undefined
        ? '–'
        : `${writeDate(signature.signedAt.slice(0, 10), book.locale)}, ${signature.signedAt.slice(11)}`,
    hasRemark: signature?.remark !== undefined,
    remark: signature?.remark ?? '',
    hasNoSignatureReason: signature?.noSignatureBecause !== undefined,
    noSignatureReason: signature?.noSignatureBecause ?? '',
    hasProof: (job.probePoints ?? []).length > 0,
    readings: readingsTable(job, evidence),
    conclusions: evidence.wires.map((wire) => ({
      text: wire.sentence,
      where: wirePlace(job.probePoints?.find((point) => point.name === wire.point)),
    })),
    electrics: electricsRows(electrics, facts),
    joints: connections.map((made) => ({
      lead: made.lead,
      method: made.method,
      covered: made.covered ?? '–',
      tape: made.tapeMillimetres === undefined ? '–' : writeLength(made.tapeMillimetres, book),
      tied: made.tied === undefined ? '–' : made.tied ? 'yes' : 'no',
      tug: made.tugHeld === undefined ? '–' : made.tugHeld ? 'held' : 'gave way',
      fuse:
        made.fuse === undefined
          ? '–'
          : `${made.fuse.ratingAmperes} A at ${writeLength(made.fuse.distanceMillimetres, book)}`,
    })),
    rulesCount: String(input.rulesChecked.length),
    rulesHeld: String(
      input.rulesChecked.filter((rule) => !findings.some((finding) => finding.rule === rule.id)).length,
    ),
    rulesSources: [...new Set(input.rulesChecked.flatMap((rule) => rule.source.match(publication) ?? []))].join(', '),
    digest: `${digest.slice(0, 8)} ${digest.slice(8, 16)}`,
  };
}

function electricsRows(
  electrics: Electrics,
  { job }: JobFacts,
): readonly { readonly name: string; readonly value: string }[] {
  const rows: { name: string; value: string }[] = [];
  const least = electrics.atDevice.toSorted((one, other) => one.millivolts - other.millivolts)[0];
  if (least !== undefined)
    rows.push({ name: 'Lowest volts at the device', value: `${writeVolts(least.millivolts)} V (${least.key})` });
  if (electrics.supplyMillivoltsMin !== null && electrics.supplyMillivoltsMax !== null)
    rows.push({
      name: 'Supply window of the device',
      value: `${writeVolts(electrics.supplyMillivoltsMin)} to ${writeVolts(electrics.supplyMillivoltsMax)} V`,
    });
  if (electrics.leadDropMillivolts !== null)
    rows.push({ name: 'Drop in its leads, worked out', value: `${writeVolts(electrics.leadDropMillivolts)} V` });
  if (electrics.groundDropMillivolts !== null)
    rows.push({
      name: 'Ground drop, measured',
      value: `${writeVolts(electrics.groundDropMillivolts)} V${electrics.groundTestMilliamps === null ? '' : ` at ${electrics.groundTestMilliamps} mA`}`,
    });
  if (electrics.fuseAmperesMax !== null && job.connections !== undefined)
    rows.push({ name: 'Largest fuse the lead allows', value: `${electrics.fuseAmperesMax} A` });
  if (electrics.standingDays !== null)
    rows.push({
      name: 'Standing time until the battery is half down',
      value: `${electrics.standingDays} days at ${electrics.asleepMilliamps} mA asleep${electrics.vehicleAsleepMeasured ? '' : ' (vehicle\u2019s own share assumed)'}`,
    });
  return rows;
}
