// A process of its own that issues one invoice for each job of a list, unless the job is billed already.
// node issue-many.js BOOK JOBS.json DRAFT.json; says so after each.
import { readFileSync } from 'node:fs';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { changeBook } from '../../src/storage/change-book.ts';
import { issueDocument } from '../../src/storage/issue-document.ts';
import { issuedForJob } from '../../src/storage/issued.ts';
import { openBook } from '../../src/storage/open-book.ts';

const [folder = '', jobsFile = '', draftFile = ''] = process.argv.slice(2);
const book = openBook(folder);
const jobs: string[] = JSON.parse(readFileSync(jobsFile, 'utf8'));
const draft: IssuedInvoice = JSON.parse(readFileSync(draftFile, 'utf8'));
const by: Parameters<typeof changeBook>[1] = {
  now: '2026-11-24T18:00:00Z',
  draw: async (numbered) => [{ name: 'invoice.pdf', content: `drawing of ${numbered.number}` }],
};
for (const job of jobs) {
  await changeBook(book, by, async (changing) => {
    if (issuedForJob(book, job) !== null) return;
    const vehicles = draft.vehicles.slice(0, 1).map((vehicle) => ({ ...vehicle, job }));
    const lines = draft.lines.map((line) => ({ ...line, job }));
    await issueDocument(changing, { draft: { ...draft, vehicles, lines }, van: null });
    process.stdout.write('issued\n');
  });
}
