import type { Job } from '../records/job.ts';
import { reasonGiven } from '../rules/open-findings.ts';
import type { Finding } from '../rules/rule.ts';
import type { Writing } from '../words/writing.ts';

type RuleChecked = { readonly id: string; readonly summary: string; readonly source: string };

/** Titles of publications inside a rule's source. */
const publication =
  /\d+ CFR \d+(?:\.\d+)?|\d+ CCR \d+|\d+ USC \d+|FAA AC [\d.]+-\w+|DIN \d+|ISO(?:\/IEC)? [\d-]*\d|3GPP TS [\d.]*\d|SAE J\d+|UNECE R\d+|FMVSS \d+/g;

const publicationsIn = (source: string): readonly string[] => [...new Set(source.match(publication) ?? [])];

/**
 * The findings of a job as the sheet prints them, by what they mean: what stops it, reasons given, advice; and the
 * count of the rules checked.
 * @param job the job
 * @param findings all findings
 * @param rulesChecked id, summary and source of each rule
 * @param writing the document's words
 */
export function printedFindings(
  job: Job,
  findings: readonly Finding[],
  rulesChecked: readonly RuleChecked[],
  writing: Writing,
) {
  const { sentences, ruleSummaries, terms } = writing;
  const text = (finding: Finding) =>
    sentences.finding({
      what: finding.what,
      summary:
        ruleSummaries[finding.rule] ?? rulesChecked.find((rule) => rule.id === finding.rule)?.summary ?? finding.what,
      at: placeOf(finding, job, writing),
    });
  const of = (severity: Finding['severity']) => findings.filter((finding) => finding.severity === severity);
  const held = rulesChecked.filter((rule) => !findings.some((finding) => finding.rule === rule.id)).length;
  const sources = [...new Set(rulesChecked.flatMap((rule) => publicationsIn(rule.source)))];
  return {
    blocks: once(of('block').map((finding) => ({ text: text(finding) }))),
    reasons: of('reason').map((finding) => ({
      text: text(finding),
      reason: reasonGiven(job, finding) ?? terms.notGiven,
      source: publicationsIn(finding.source).join(', ') || terms.commonPractice,
    })),
    advice: once(
      of('advise').map((finding) => ({
        text: writing.language === 'en' ? `${finding.what} ${finding.whatToDo}` : text(finding),
      })),
    ),
    rules: [
      { text: sentences.rulesLine(writing.whole(held), writing.whole(rulesChecked.length)) },
      ...(sources.length === 0 ? [] : [{ text: sentences.rulesSources(sources.join(', ')) }]),
    ],
  };
}

// places that are words of the program, not of the record, are left to the sentence itself
function placeOf(finding: Finding, job: Job, { terms }: Writing): string {
  const leads: Readonly<Record<string, string>> = terms.leads;
  const own = [
    ...(job.probePoints ?? []).map((point) => point.name),
    ...(job.panels ?? []).map((panel) => panel.name),
    ...(job.photographs ?? []).map((photograph) => photograph.file),
  ];
  return leads[finding.at] ?? (own.includes(finding.at) ? finding.at : '');
}

/** Lines without those said already. */
function once<Line extends { readonly text: string }>(lines: readonly Line[]): readonly Line[] {
  return lines.filter((line, place) => lines.findIndex((each) => each.text === line.text) === place);
}
