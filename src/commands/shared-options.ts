import type { CommandOption } from './command.ts';

/** Options that every command takes. */
export const sharedOptions: Readonly<Record<string, CommandOption>> = {
  book: { type: 'string', takes: 'DIR', help: 'the book to work in (else KEYOUT_BOOK)' },
  json: { type: 'boolean', help: 'one JSON document on stdout' },
  'no-input': { type: 'boolean', help: 'never ask; fail instead' },
  plain: { type: 'boolean', help: 'ask in plain lines, for screen readers and simple terminals' },
  today: { type: 'string', takes: 'DATE', help: 'take this day for today' },
  van: { type: 'string', takes: 'NAME', help: 'issue in the number series of this van (else KEYOUT_VAN)' },
  help: { type: 'boolean', short: 'h', help: 'this text' },
  debug: { type: 'boolean', help: 'show the stack of a program error' },
};

/** Environment variables that every command reads, each with what it does. */
export const environmentVariables: readonly (readonly [name: string, help: string])[] = [
  ['KEYOUT_BOOK', 'the book to work in, where --book does not name one'],
  ['KEYOUT_VAN', 'the van that issues, where --van does not name one'],
  ['TERM', '"dumb" asks in plain lines, as --plain does'],
];
