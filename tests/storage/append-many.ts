import { appendLedger } from '../../src/storage/ledger.ts';
import { openBook } from '../../src/storage/open-book.ts';

// A process of its own that adds lines to a ledger: node append-many.js BOOK ENTRY.json-text TIMES
const [folder = '', entry = '', times = ''] = process.argv.slice(2);
const book = openBook(folder);
for (let turn = 0; turn < Number(times); turn += 1) appendLedger(book, JSON.parse(entry));
