import type { CalendarDate } from '../quantities/calendar-date.ts';

/** The outside world as a command sees it: everything that differs between runs is in here. */
export type World = {
  /** results, stdout */
  readonly say: (text: string) => void;
  /** messages for people, stderr */
  readonly tell: (text: string) => void;
  /** today in the business's own zone, or the day of the option `--today` */
  readonly today: (timeZone: string) => CalendarDate;
  /** this moment, UTC, `YYYY-MM-DDTHH:MM:SSZ` */
  readonly now: () => string;
  /** folder that `--book` and KEYOUT_BOOK led to; the commands open it themselves */
  readonly bookFolder: string;
  /** the van that issues with a number series of its own (`--van`, KEYOUT_VAN), or null */
  readonly van?: string | null;
  readonly json: boolean;
  /** false with --no-input or without a terminal */
  readonly mayAsk: boolean;
  /** one plain line a question: --plain, or a terminal that cannot move its cursor */
  readonly plain: boolean;
  /** terminal columns */
  readonly columns: number;
  /** uniform in [0, 1), for job names */
  readonly random: () => number;
};

export type CommandOption = {
  readonly type: 'string' | 'boolean';
  readonly multiple?: boolean;
  readonly short?: string;
  /** "DATE", for the help text of string options */
  readonly takes?: string;
  readonly help: string;
};

export type Call = {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | readonly string[] | undefined>>;
};

/** One command, alone in its file; `run` returns the exit code 0 (done) or 1 (the answer is no). */
export type Command = {
  readonly options: Readonly<Record<string, CommandOption>>;
  readonly run: (call: Call, world: World) => Promise<0 | 1>;
};

/** What is said of a command everywhere: help, README, completion. It stands apart, so that help need not load the command. */
export type CommandEntry = {
  readonly name: string;
  /** "JOB…" */
  readonly words: string;
  readonly summary: string;
  /** two calls as they would be typed */
  readonly examples: readonly [string, string];
  readonly load: () => Promise<Command>;
};
