import { clockMinutesBetween } from '../../quantities/calendar-date.ts';
import type { Job, JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Hit, Voice } from '../rule-words.ts';

/** A visit longer than this is more likely a mistyped time (common practice, no source). */
const visitMinutesMax = 16 * 60;

function impossible({ labour, day, signature }: Job): readonly Hit<typeof words>[] {
  const at = 'labour';
  const { start, end, breakMinutes = 0, waitingMinutes = 0 } = labour ?? {};
  const hits: Hit<typeof words>[] = [];
  if (start !== undefined && end !== undefined) {
    const visit = clockMinutesBetween(start, end);
    if (visit <= 0)
      return [{ at, says: 'ends before it begins', figures: { start: start.slice(11), end: end.slice(11) } }];
    const idle = breakMinutes + waitingMinutes;
    if (idle > visit) hits.push({ at, says: 'more waiting than visit', figures: { idle, visit } });
    if (visit > visitMinutesMax)
      hits.push({ at, says: 'very long', figures: { hours: Math.floor(visit / 60), minutes: visit % 60 } });
  }
  if (start !== undefined && start.slice(0, 10) !== day)
    hits.push({ at, says: 'another day', figures: { begins: start.slice(0, 10), day } });
  const signed = signature?.signedAt;
  if (start !== undefined && signed !== undefined && clockMinutesBetween(start, signed) < 0) {
    const figures = { signed: signed.replace('T', ' '), start: start.replace('T', ' ') };
    hits.push({ at, says: 'signed before it began', figures });
  }
  return hits;
}

const labourOf = (labour: NonNullable<JobInput['labour']>) => (job: JobInput) => ({ ...job, labour });

const words = {
  summary: () => 'The times of the visit are possible.',
  why: 'A bill for impossible hours is not paid.',
  says: {
    'ends before it begins': (times: { start: string; end: string }) => ({
      what: `The work ends (${times.end}) before it begins (${times.start}).`,
      whatToDo: 'Correct the times; a visit past midnight ends on the next day.',
    }),
    'more waiting than visit': (times: { idle: number; visit: number }) => ({
      what: `Waiting and breaks take ${times.idle} minutes of a visit of ${times.visit}.`,
      whatToDo: 'Correct the times: waiting on site lies between start and end.',
    }),
    'very long': (times: { hours: number; minutes: number }) => ({
      what: `The visit takes ${times.hours} hours and ${times.minutes} minutes.`,
      whatToDo: 'Look at the dates of start and end again.',
    }),
    'another day': (times: { begins: string; day: string }, voice: Voice) => ({
      what: `The work begins on ${voice.day(times.begins)}, the job is of ${voice.day(times.day)}.`,
      whatToDo: 'Correct the time, or record the job under its own day.',
    }),
    'signed before it began': (times: { signed: string; start: string }) => ({
      what: `The sheet was signed (${times.signed}) before the work began (${times.start}).`,
      whatToDo: 'Correct the times, or have the sheet signed again.',
    }),
  },
};

/** The times of the visit are possible. */
export const timesArePossible = defineRule({
  id: 'times-are-possible',
  group: 'record',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) => impossible(job),
  examples: [
    {
      name: 'from 08:00 to 09:00',
      change: labourOf({ start: '2026-11-24T08:00', end: '2026-11-24T09:00' }),
      finds: [],
    },
    {
      name: 'past midnight',
      change: (job) => ({
        ...job,
        labour: { start: '2026-11-24T22:00', end: '2026-11-25T01:00' },
        signature: { answer: 'not available', noSignatureBecause: 'night, nobody on site' },
      }),
      finds: [],
    },
    {
      name: 'from 09:00 to 08:00',
      change: labourOf({ start: '2026-11-24T09:00', end: '2026-11-24T08:00' }),
      finds: [
        {
          at: 'labour',
          severity: 'reason',
          what: 'The work ends (08:00) before it begins (09:00).',
          whatToDo: 'Correct the times; a visit past midnight ends on the next day.',
        },
      ],
    },
    {
      name: '61 minutes of waiting in an hour',
      change: labourOf({ start: '2026-11-24T08:00', end: '2026-11-24T09:00', waitingMinutes: 61 }),
      finds: [
        {
          at: 'labour',
          severity: 'reason',
          what: 'Waiting and breaks take 61 minutes of a visit of 60.',
          whatToDo: 'Correct the times: waiting on site lies between start and end.',
        },
      ],
    },
    {
      name: 'begun on another day',
      change: labourOf({ start: '2026-11-23T08:00', end: '2026-11-23T09:00' }),
      finds: [
        {
          at: 'labour',
          severity: 'reason',
          what: 'The work begins on 2026-11-23, the job is of 2026-11-24.',
          whatToDo: 'Correct the time, or record the job under its own day.',
        },
      ],
    },
    {
      name: 'signed before it began',
      change: labourOf({ start: '2026-11-24T10:00', end: '2026-11-24T11:00' }),
      finds: [
        {
          at: 'labour',
          severity: 'reason',
          what: 'The sheet was signed (2026-11-24 09:05) before the work began (2026-11-24 10:00).',
          whatToDo: 'Correct the times, or have the sheet signed again.',
        },
      ],
    },
    {
      name: 'a visit of 17 hours and 30 minutes',
      change: (job) => ({
        ...job,
        labour: { start: '2026-11-24T05:00', end: '2026-11-24T22:30' },
        signature: { answer: 'not available', noSignatureBecause: 'night, nobody on site' },
      }),
      finds: [
        {
          at: 'labour',
          severity: 'reason',
          what: 'The visit takes 17 hours and 30 minutes.',
          whatToDo: 'Look at the dates of start and end again.',
        },
      ],
    },
  ],
});
