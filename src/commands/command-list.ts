import type { Command } from './command.ts';

/** Every command in the order of the help text: its name, what it takes, one sentence, and how to load it. */
export const commandList: readonly {
  readonly name: string;
  readonly words: string;
  readonly summary: string;
  readonly load: () => Promise<Command>;
}[] = [
  {
    name: 'setup',
    words: '',
    summary: 'the business, its tax, numbering, rate card: asked once, changed any time',
    load: async () => (await import('./setup.ts')).setup,
  },
  {
    name: 'fit',
    words: '[JOB]',
    summary: 'the interactive record of one job: start, or go on',
    load: async () => (await import('./fit.ts')).fit,
  },
  {
    name: 'check',
    words: '[JOB…]',
    summary: 'verdicts against readings, and every trade rule',
    load: async () => (await import('./check.ts')).check,
  },
  {
    name: 'handover',
    words: 'JOB…',
    summary: 'the handover sheet, PDF',
    load: async () => (await import('./handover.ts')).handover,
  },
  {
    name: 'sign',
    words: 'JOB',
    summary: 'the customer signs on a touch screen, or a scan is filed',
    load: async () => (await import('./sign.ts')).sign,
  },
  {
    name: 'bill',
    words: '[JOB…]',
    summary: 'issue invoices, one a vehicle or one a payer',
    load: async () => (await import('./bill.ts')).bill,
  },
  {
    name: 'day',
    words: '[DATE]',
    summary: 'finish the day: check, hand over, bill, list what is open',
    load: async () => (await import('./day.ts')).day,
  },
  {
    name: 'credit',
    words: 'INVOICE',
    summary: 'credit note, whole or by line',
    load: async () => (await import('./credit.ts')).credit,
  },
  {
    name: 'paid',
    words: 'INVOICE…',
    summary: 'record a payment',
    load: async () => (await import('./paid.ts')).paid,
  },
  {
    name: 'owed',
    words: '',
    summary: 'who owes what, by age',
    load: async () => (await import('./owed.ts')).owed,
  },
  {
    name: 'export',
    words: '',
    summary: "the bookkeeper's files for a period",
    load: async () => (await import('./export.ts')).exportCommand,
  },
  {
    name: 'recall',
    words: '[WORDS]',
    summary: 'what earlier jobs on such a vehicle found',
    load: async () => (await import('./recall.ts')).recall,
  },
  {
    name: 'rules',
    words: '[ID]',
    summary: 'the trade rules with their sources',
    load: async () => (await import('./rules.ts')).rulesCommand,
  },
  {
    name: 'preview',
    words: '[handover|invoice] [JOB]',
    summary: 'see your template: re-prints on save, names the line of a mistake',
    load: async () => (await import('./preview.ts')).preview,
  },
  {
    name: 'schema',
    words: 'NAME',
    summary: 'JSON Schema of a record (job, book, rates, devices, payer, trip) or of what --json prints (check, rules)',
    load: async () => (await import('./schema.ts')).schema,
  },
  {
    name: 'verify',
    words: '',
    summary: 'the whole book: nothing missing, altered or skipped',
    load: async () => (await import('./verify.ts')).verify,
  },
  {
    name: 'demo',
    words: '[DIR]',
    summary: 'a sample book, and its sample day finished',
    load: async () => (await import('./demo.ts')).demo,
  },
];
