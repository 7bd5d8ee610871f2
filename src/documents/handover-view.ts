import type { Electrics } from '../electrics/electrics.ts';
import type { Job } from '../records/job.ts';
import { documentLanguage, type Language } from '../records/language.ts';
import type { Condition } from '../records/vehicle.ts';
import type { Finding } from '../rules/finding.ts';
import type { JobFacts } from '../rules/job-facts.ts';
import { type Writing, writingFor } from '../words/writing.ts';
import { electricsRows } from './electrics-rows.ts';
import { deviceFacts, jobFacts, vehicleFacts } from './head-facts.ts';
import { photographRows } from './photograph-rows.ts';
import { placementPlan } from './placement-plan.ts';
import { printedFindings } from './printed-findings.ts';
import { printedSignature } from './printed-signature.ts';
import { readingsTable } from './readings-table.ts';
import { safetyNotes } from './safety-notes.ts';
import { isRemoval, summarySentences } from './summary-sentences.ts';
import { wireConclusions } from './wire-conclusions.ts';
import { vehicleInWords } from './wire-words.ts';
import { wiringFigure } from './wiring-figure.ts';

export type HandoverInput = {
  readonly facts: JobFacts;
  readonly findings: readonly Finding[];
  readonly electrics: Electrics;
  readonly rulesChecked: readonly { readonly id: string; readonly source: string }[];
  /** SHA-256 of the record */
  readonly digest: string;
  /** true where the record was changed after the customer had signed */
  readonly signatureIsVoid?: boolean;
  /** names of the images that can be printed: photographs by their file names, the business's logo as "logo" */
  readonly imageNames?: readonly string[];
};

/** Name of the business's logo among the images of a document. */
export const logoName = 'logo';

/** The language of a job's sheet: the payer's where it has one, else the business's. */
export function handoverLanguage({ payer, book }: Pick<JobFacts, 'payer' | 'book'>): Language {
  return documentLanguage(payer, book);
}

/** Everything the handover sheet says, worded and formatted: strings, booleans and lists only. */
export function handoverView(input: HandoverInput) {
  const { facts, digest } = input;
  const { job, book } = facts;
  const language = handoverLanguage(facts);
  const writing = writingFor(book, language, book.currency);
  const { address, phone, email, website } = book.business;
  return {
    words: writing.labels,
    paper: book.paper,
    accent: book.accent,
    language,
    business: book.business.name,
    businessLines: [
      [...address.lines, address.city].join(', '),
      [phone, email, website].filter((word) => word !== undefined).join(' · '),
    ]
      .filter((line) => line !== '')
      .map((text) => ({ text })),
    hasLogo: input.imageNames?.includes(logoName) ?? false,
    job: job.id,
    digest: `${digest.slice(0, 8)} ${digest.slice(8, 16)}`,
    installer: job.identity.installer ?? book.business.installer,
    vehicle: vehicleInWords(job.vehicle, writing),
    jobFacts: jobFacts(facts, writing),
    vehicleFacts: vehicleFacts(job, writing),
    deviceFacts: job.identity.visit === 'wasted visit' ? [] : deviceFacts(job, facts.profile, writing),
    summary: summarySentences(job, facts.profile, facts.evidence, writing).join(' '),
    ...fittedParts(job, writing),
    ...conditionParts(job, writing),
    ...closingParts(input, writing),
    ...proofParts(input, writing),
  };
}

/** The figures: what is joined to what, and where the device sits; nothing of it on a removal. */
function fittedParts(job: Job, writing: Writing) {
  const { terms, sentences, labels } = writing;
  const fitted = !isRemoval(job) && job.identity.visit !== 'wasted visit';
  const placement = fitted ? job.placement : undefined;
  const wired = fitted && (job.connections ?? []).length > 0;
  return {
    hasFigures: wired || placement !== undefined,
    figuresHeading: wired ? (placement === undefined ? labels.wiring : labels.wiringAndPlace) : labels.whereItSits,
    hasWiring: wired,
    wiring: wiringFigure(job, writing),
    hasPlacement: placement !== undefined,
    plan: placementPlan(placement, job.vehicle, writing),
    zone: placement === undefined ? '' : terms.zones[placement.zone][0],
    surface: placement?.surface ?? '',
    fixing:
      placement === undefined
        ? ''
        : sentences.fixed(
            terms.fixings[placement.fixing],
            (placement.fixingPoints ?? 0) === 0 ? null : writing.whole(placement.fixingPoints ?? 0),
          ),
  };
}

function condition(state: Condition | undefined, name: string, { terms, volts }: Writing) {
  const missing = '–';
  return {
    name,
    lamps: state === undefined ? missing : state.warningLamps.join(', ') || terms.noLamp,
    functions: state === undefined ? missing : state.functionsNotWorking.join(', ') || terms.noFault,
    rest: state?.restVolts === undefined ? missing : volts(state.restVolts),
    charging: state?.chargingVolts === undefined ? missing : volts(state.chargingVolts),
  };
}

function conditionParts(job: Job, writing: Writing) {
  const { labels, sentences, whole } = writing;
  const worked = job.identity.visit !== 'wasted visit';
  const fasteners = worked ? (job.panels ?? []) : [];
  return {
    hasConditions: worked && (job.before !== undefined || job.after !== undefined),
    conditions: [condition(job.before, labels.before, writing), condition(job.after, labels.after, writing)],
    hasFasteners: fasteners.length > 0,
    fasteners: fasteners.map((panel) => ({
      text: sentences.fastener({
        name: panel.name,
        fastener: panel.fastener,
        out: whole(panel.out),
        back: panel.in === undefined ? null : whole(panel.in),
      }),
    })),
  };
}

function closingParts(input: HandoverInput, writing: Writing) {
  const { facts, findings, rulesChecked, signatureIsVoid, imageNames } = input;
  const { job } = facts;
  const worked = job.identity.visit !== 'wasted visit';
  const notes = safetyNotes(job);
  const found = printedFindings(job, findings, rulesChecked, writing);
  const photographs = photographRows(job, imageNames ?? [], writing);
  return {
    hasNotes: notes.length > 0,
    notes: notes.map((name) => ({ text: writing.sentences.notes[name] })),
    hasRemarks: (job.notes ?? '') !== '',
    remarks: job.notes ?? '',
    hasBlocks: found.blocks.length > 0,
    blocks: found.blocks,
    hasReasons: found.reasons.length > 0,
    reasons: found.reasons,
    hasAdvice: found.advice.length > 0,
    advice: found.advice,
    hasRules: worked,
    rules: worked ? found.rules : [],
    signature: printedSignature(job, signatureIsVoid ?? false, writing),
    hasPhotographs: photographs.length > 0,
    photographRows: photographs,
  };
}

function proofParts({ facts, electrics }: HandoverInput, writing: Writing) {
  const { job, evidence } = facts;
  const worked = job.identity.visit !== 'wasted visit';
  const electricity = worked ? electricsRows(electrics, job, writing) : [];
  const joints = worked ? jointRows(job, writing) : [];
  const conclusions = worked ? wireConclusions(job, evidence, writing) : [];
  return {
    hasReadings: worked && (job.probePoints ?? []).some((point) => point.readings.length > 0),
    readings: readingsTable(job, evidence, writing),
    hasConclusions: conclusions.length > 0,
    conclusions,
    hasElectrics: electricity.length > 0,
    electrics: electricity,
    hasJoints: joints.length > 0,
    joints,
  };
}

function jointRows(job: Job, writing: Writing) {
  const { terms, sentences } = writing;
  const missing = '–';
  return (job.connections ?? []).map((made) => ({
    lead: terms.leads[made.lead],
    method: terms.methods[made.method],
    covered: made.covered === undefined ? missing : terms.covers[made.covered],
    tape: made.tapeMillimetres === undefined ? missing : writing.length(made.tapeMillimetres),
    tied: made.tied === undefined ? missing : made.tied ? terms.yes : terms.no,
    tug: made.tugHeld === undefined ? missing : made.tugHeld ? terms.held : terms.gaveWay,
    fuse:
      made.fuse === undefined
        ? missing
        : sentences.fuseAt(writing.decimal(made.fuse.ratingAmperes), writing.length(made.fuse.distanceMillimetres)),
  }));
}
