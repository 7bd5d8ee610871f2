import type { Job, JobInput } from '../../records/job.ts';
import type { Rule, RuleHit } from '../rule.ts';

/** A visit longer than this is more likely a mistyped time (common practice, no source). */
const visitMinutesMax = 16 * 60;

/** Minutes of the wall clock since some day; a change of the clocks is left aside, the limits here are hours wide. */
function clockMinutes(time: string): number {
  return (
    Date.UTC(
      Number(time.slice(0, 4)),
      Number(time.slice(5, 7)) - 1,
      Number(time.slice(8, 10)),
      Number(time.slice(11, 13)),
      Number(time.slice(14, 16)),
    ) / 60_000
  );
}

function impossible({ labour, day, signature }: Job): readonly Omit<RuleHit, 'at'>[] {
  const { start, end, breakMinutes = 0, waitingMinutes = 0 } = labour ?? {};
  const hits: Omit<RuleHit, 'at'>[] = [];
  if (start !== undefined && end !== undefined) {
    const minutes = clockMinutes(end) - clockMinutes(start);
    if (minutes <= 0)
      return [
        {
          what: `The work ends (${end.slice(11)}) before it begins (${start.slice(11)}).`,
          whatToDo: 'Mend the times; a visit past midnight ends on the next day.',
        },
      ];
    if (breakMinutes + waitingMinutes > minutes)
      hits.push({
        what: `Waiting and breaks take ${breakMinutes + waitingMinutes} minutes of a visit of ${minutes}.`,
        whatToDo: 'Mend the times: waiting on site lies between start and end.',
      });
    if (minutes > visitMinutesMax)
      hits.push({
        what: `The visit takes ${Math.floor(minutes / 60)} hours and ${minutes % 60} minutes.`,
        whatToDo: 'Look at the dates of start and end again.',
      });
  }
  if (start !== undefined && start.slice(0, 10) !== day)
    hits.push({
      what: `The work begins on ${start.slice(0, 10)}, the job is of ${day}.`,
      whatToDo: 'Mend the time, or record the job under its own day.',
    });
  const signed = signature?.signedAt;
  if (start !== undefined && signed !== undefined && clockMinutes(signed) < clockMinutes(start))
    hits.push({
      what: `The sheet was signed (${signed.replace('T', ' ')}) before the work began (${start.replace('T', ' ')}).`,
      whatToDo: 'Mend the times, or have the sheet signed again.',
    });
  return hits;
}

const labourOf = (labour: NonNullable<JobInput['labour']>) => (job: JobInput) => ({ ...job, labour });

/** The times of the visit are possible. */
export const timesArePossible: Rule = {
  id: 'times-are-possible',
  group: 'record',
  severity: 'reason',
  summary: 'The times of the visit are possible.',
  why: 'A bill for impossible hours is not paid.',
  source: 'common practice, no source',
  check: ({ job }) => impossible(job).map((hit) => ({ at: 'labour', ...hit })),
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
          whatToDo: 'Mend the times; a visit past midnight ends on the next day.',
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
          whatToDo: 'Mend the times: waiting on site lies between start and end.',
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
          whatToDo: 'Mend the time, or record the job under its own day.',
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
          whatToDo: 'Mend the times, or have the sheet signed again.',
        },
      ],
    },
  ],
};
