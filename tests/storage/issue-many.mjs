// A process of its own that issues one invoice for each job of a list, unless the job is billed already.
// node issue-many.mjs BOOK JOBS.json DRAFT.json; says so after each.
import { readFileSync } from 'node:fs';
import { changeBook } from '../../dist/storage/change-book.js';
import { issueDocument } from '../../dist/storage/issue-document.js';
import { issuedForJob } from '../../dist/storage/issued.js';
import { openBook } from '../../dist/storage/open-book.js';

const [folder, jobsFile, draftFile] = process.argv.slice(2);
const book = openBook(folder);
const jobs = JSON.parse(readFileSync(jobsFile, 'utf8'));
const draft = JSON.parse(readFileSync(draftFile, 'utf8'));
const by = {
  now: '2026-11-24T18:00:00Z',
  draw: async (numbered) => [{ name: 'invoice.pdf', content: `drawing of ${numbered.number}` }],
};
for (const job of jobs) {
  await changeBook(book, by, async (changing) => {
    if (issuedForJob(book, job) !== null) return;
    const vehicles = [{ ...draft.vehicles[0], job }];
    const lines = draft.lines.map((line) => ({ ...line, job }));
    await issueDocument(changing, { draft: { ...draft, vehicles, lines }, van: null });
    process.stdout.write('issued\n');
  });
}
