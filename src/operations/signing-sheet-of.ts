import { handoverView } from '../documents/handover-view.ts';
import type { SigningSheet } from '../phone/signing-sheet.ts';
import { rules } from '../rules/index.ts';
import { signedRecordDigest } from '../storage/digest.ts';
import type { ExaminedJob } from './examine-job.ts';

/**
 * The essentials of a job's handover sheet, as the customer reads them before signing: the sheet's own words.
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
    rulesChecked: rules.map(({ id, source }) => ({ id, source })),
    digest: record,
  });
  const { words } = view;
  const section = (heading: string, paragraphs: readonly string[], items: readonly string[] = []) =>
    paragraphs.length + items.length === 0 ? [] : [{ heading, paragraphs, items }];
  const texts = (lines: readonly { readonly text: string }[]) => lines.map(({ text }) => text);
  return {
    language: view.language,
    title: `${words.handoverSheet} ${view.job}`,
    business: view.business,
    facts: [...view.jobFacts, ...view.vehicleFacts, ...view.deviceFacts].map(({ name, text }) => ({
      name,
      value: text,
    })),
    sections: [
      ...section(words.whatWasDone, [view.summary]),
      ...section(words.wiring, [], view.hasWiring ? texts(view.wiring.inWords) : []),
      ...section(
        words.beforeAndAfter,
        view.hasConditions
          ? view.conditions.map(
              ({ name, lamps, functions }) =>
                `${name}: ${words.warningLamps}: ${lamps}; ${words.notWorking}: ${functions}.`,
            )
          : [],
        texts(view.fasteners),
      ),
      ...section(words.forDriver, [], texts(view.notes)),
      ...section(words.installersNote, view.hasRemarks ? [view.remarks] : []),
      ...section(
        words.findings,
        [],
        view.reasons.map(({ text, reason }) => `${text} ${words.reason}: ${reason}`),
      ),
      ...section(words.advice, [], texts(view.advice)),
    ],
    statement: words.signingStatement,
    record: `${words.record} ${record}`,
  };
}
