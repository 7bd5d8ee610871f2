import { handoverView } from '../documents/handover-view.ts';
import { rules } from '../rules/index.ts';
import type { SigningSheet } from '../signing/signing-sheet.ts';
import { signedRecordDigest } from '../storage/digest.ts';
import type { ExaminedJob } from './examine-job.ts';

const words = {
  en: {
    title: 'Handover sheet',
    names: ['Date', 'Place', 'Vehicle', 'VIN', 'Plate', 'Unit', 'Odometer', 'Owner', 'Ordered by', 'Installer'],
    device: ['Device', 'Serial', 'IMEI'],
    done: 'What was done',
    wiring: 'Wiring',
    condition: 'Before and after',
    before: 'Before',
    after: 'After',
    lamps: 'warning lamps',
    broken: 'not working',
    notes: 'For the driver and the next mechanic',
    remarks: 'Installer’s note',
    reasons: 'Findings and the reasons given',
    reason: 'Reason',
    advice: 'Advice',
    statement:
      'Your answer, name, signature and the time are kept with this record. Any later change to what stands here voids the signature.',
    record: 'Record',
  },
  es: {
    title: 'Hoja de entrega',
    names: [
      'Fecha',
      'Lugar',
      'Vehículo',
      'VIN',
      'Matrícula',
      'Unidad',
      'Odómetro',
      'Propietario',
      'Encargado por',
      'Instalador',
    ],
    device: ['Dispositivo', 'Serie', 'IMEI'],
    done: 'Qué se hizo',
    wiring: 'Cableado',
    condition: 'Antes y después',
    before: 'Antes',
    after: 'Después',
    lamps: 'testigos',
    broken: 'no funciona',
    notes: 'Para el conductor y el próximo mecánico',
    remarks: 'Nota del instalador',
    reasons: 'Hallazgos y razones dadas',
    reason: 'Razón',
    advice: 'Consejos',
    statement:
      'Su respuesta, su nombre, su firma y la hora se guardan con este registro. Todo cambio posterior de lo que consta aquí anula la firma.',
    record: 'Registro',
  },
} as const;

/**
 * The essentials of a job's handover sheet, as the customer reads them before signing.
 * @param examined the job, examined as if nobody had signed yet
 */
export function signingSheetOf(examined: ExaminedJob): SigningSheet {
  const { job, facts, electrics } = examined;
  const record = signedRecordDigest(job);
  // the page itself asks for what this finding misses
  const findings = examined.findings.filter((finding) => finding.rule !== 'signature-or-reason');
  const view = handoverView({
    facts,
    findings,
    electrics,
    rulesChecked: rules.map(({ id, summary, source }) => ({ id, summary, source })),
    printedOn: job.day,
    digest: record,
  });
  const word = words[facts.book.language];
  const shown = [view.day, view.place, view.vehicle, view.vin, view.plate, view.unit, view.odometer];
  const named = (names: readonly string[], values: readonly string[]) =>
    names.map((name, index) => ({ name, value: values[index] ?? '' })).filter(({ value }) => value !== '–');
  const section = (heading: string, paragraphs: readonly string[], items: readonly string[] = []) =>
    paragraphs.length + items.length === 0 ? [] : [{ heading, paragraphs, items }];
  const state = (name: string, { lamps, functions }: { readonly lamps: string; readonly functions: string }) =>
    `${name}: ${word.lamps}: ${lamps}; ${word.broken}: ${functions}.`;
  return {
    language: facts.book.language,
    title: `${word.title} ${view.job}`,
    business: view.business,
    facts: [
      ...named(word.names, [...shown, view.customer, view.orderedBy, view.installer]),
      ...(view.hasDevice ? named(word.device, [view.device, view.serial, view.imei]) : []),
    ],
    sections: [
      ...section(word.done, [view.summary]),
      ...section(word.wiring, [], view.hasConnections ? view.wiring.alternative.split('; ') : []),
      ...section(
        word.condition,
        view.wasWorked ? [state(word.before, view.before), state(word.after, view.after)] : [],
        view.fasteners.map(({ text }) => text),
      ),
      ...section(
        word.notes,
        [],
        view.notes.map(({ text }) => text),
      ),
      ...section(word.remarks, view.hasRemarks ? [view.remarks] : []),
      ...section(
        word.reasons,
        [],
        view.reasons.map(({ what, reason }) => `${what} ${word.reason}: ${reason}`),
      ),
      ...section(
        word.advice,
        [],
        view.advice.map(({ text }) => text),
      ),
    ],
    statement: word.statement,
    record: `${word.record} ${record}`,
  };
}
