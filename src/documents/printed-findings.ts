import type { Job } from '../records/job.ts';
import type { Finding } from '../rules/finding.ts';
import { reasonGiven } from '../rules/open-findings.ts';
import { sayFinding } from '../words/say-finding.ts';
import type { Writing } from '../words/writing.ts';

type RuleChecked = { readonly id: string; readonly source: string };

/** Titles of publications inside a rule's source. */
const publication =
  /\d+ CFR \d+(?:\.\d+)?|\d+ CCR \d+|\d+ USC \d+|FAA AC [\d.]+-\w+|DIN \d+|ISO(?:\/IEC)? [\d-]*\d|3GPP TS [\d.]*\d|SAE J\d+|UNECE R\d+|FMVSS \d+/g;

const publicationsIn = (source: string): readonly string[] => [...new Set(source.match(publication) ?? [])];

/**
 * The findings of a job as the sheet prints them, by what they mean: what stops it, reasons given, advice; and what the
 * rules checked rest on.
 * @param job the job
 * @param findings all findings
 * @param rulesChecked id and source of each rule
 * @param writing the document's words
 */
export function printedFindings(
  job: Job,
  findings: readonly Finding[],
  rulesChecked: readonly RuleChecked[],
  writing: Writing,
) {
  const { sentences, terms } = writing;
  const speech = writing.speech(job.vehicle);
  const said = (finding: Finding) => sayFinding(finding, writing.rules, speech);
  const of = (severity: Finding['severity']) => findings.filter((finding) => finding.severity === severity);
  const sources = [...new Set(rulesChecked.flatMap((rule) => publicationsIn(rule.source)))];
  return {
    blocks: once(of('block').map((finding) => ({ text: said(finding).what }))),
    reasons: of('reason').map((finding) => ({
      text: said(finding).what,
      reason: reasonGiven(job, finding) ?? terms.notGiven,
      source: publicationsIn(finding.source).join(', ') || terms.commonPractice,
    })),
    advice: once(
      of('advise').map((finding) => {
        const { what, whatToDo } = said(finding);
        return { text: `${what} ${whatToDo}` };
      }),
    ),
    rules: [
      { text: sentences.rulesLine[findings.length === 0 ? 'all hold' : 'some found something'] },
      ...(sources.length === 0 ? [] : [{ text: sentences.rulesSources(sources.join(', ')) }]),
    ],
  };
}

/** Lines without those said already. */
function once<Line extends { readonly text: string }>(lines: readonly Line[]): readonly Line[] {
  return lines.filter((line, index) => lines.findIndex((each) => each.text === line.text) === index);
}
