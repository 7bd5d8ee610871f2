import type { CalendarDate } from '../quantities/calendar-date.ts';

/** When an operation happens, and in whose number series it issues. */
export type Moment = {
  /** this moment, UTC, `YYYY-MM-DDTHH:MM:SSZ` */
  readonly now: string;
  /** the day in the business's own zone */
  readonly today: CalendarDate;
  /** the van that issues with a number series of its own, or null */
  readonly van: string | null;
};
