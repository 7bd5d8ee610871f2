import { handoverView } from '../documents/handover-view.ts';
import { rules } from '../rules/index.ts';
import { recordDigest } from '../storage/digest.ts';
import { readFonts } from '../storage/fonts.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { signatureState } from '../storage/signature-state.ts';
import { readTemplates } from '../storage/templates.ts';
import { typeset } from '../typesetting/typeset.ts';
import { documentImages } from './document-images.ts';
import type { ExaminedJob } from './examine-job.ts';

/**
 * The handover sheet of a job: PDF bytes, the text of its pages and the digest of the record it was made from.
 * The printing date is the job's own day, so that the same record gives the same bytes.
 * @param book the open book
 * @param examined the job with all that follows from it
 */
export async function renderHandover(book: OpenBook, examined: ExaminedJob) {
  const { job, facts, findings, electrics } = examined;
  const digest = recordDigest(job);
  const templates = await readTemplates(book);
  const images = await documentImages(book, job);
  const view = handoverView({
    facts,
    findings,
    electrics,
    rulesChecked: rules.map(({ id, source }) => ({ id, source })),
    digest,
    signatureIsVoid: signatureState(job) === 'void',
    imageNames: Object.keys(images),
  });
  const result = typeset({
    template: templates.text('handover'),
    templateName: templates.path('handover'),
    partials: templates.partials,
    view,
    fonts: await readFonts(),
    images,
    language: view.language,
    title: `${view.words.handoverSheet} ${job.id}`,
    author: book.book.business.name,
    created: job.day,
    identity: digest,
  });
  return { ...(await result), digest };
}
