import { plainDecimal } from '../../quantities/major-units.ts';
import type { InvoiceLine, IssuedInvoice } from '../../records/issued-invoice.ts';
import type { Trip } from '../../records/trip.ts';
import { type ExportInput, moneyCell, signed } from '../export-input.ts';
import { type Column, makeTable, type Table } from './table.ts';

type Row = { readonly trip: Trip; readonly currency: string };
type Share = Row & {
  readonly job: Trip['jobs'][number];
  readonly documents: readonly IssuedInvoice[];
};

const columns: readonly Column<Row>[] = [
  { name: 'day', kind: 'date', about: 'Day of the trip.', of: ({ trip }) => trip.day },
  { name: 'from', kind: 'text', about: 'Where it began.', of: ({ trip }) => trip.from ?? null },
  { name: 'distance', kind: 'decimal', about: 'Whole distance driven.', of: ({ trip }) => plainDecimal(trip.distance) },
  { name: 'unit', kind: 'text', about: '"mi" or "km".', of: ({ trip }) => trip.unit },
  { name: 'travel_minutes', kind: 'integer', about: 'Minutes on the road.', of: ({ trip }) => trip.travelMinutes },
  {
    name: 'tolls',
    kind: 'money',
    about: 'Tolls paid.',
    of: ({ trip, currency }) => moneyCell(trip.tollsMinorUnits, currency),
  },
  {
    name: 'parking',
    kind: 'money',
    about: 'Parking paid.',
    of: ({ trip, currency }) => moneyCell(trip.parkingMinorUnits, currency),
  },
  {
    name: 'currency',
    kind: 'text',
    about: 'Currency of tolls and parking (ISO 4217).',
    of: ({ currency }) => currency,
  },
  {
    name: 'shared_by',
    kind: 'text',
    about: 'How it is shared over its jobs: "equally", "time" or "distance".',
    of: ({ trip }) => trip.shareBy,
  },
  { name: 'jobs', kind: 'integer', about: 'How many jobs share it.', of: ({ trip }) => trip.jobs.length },
];

const billed = (kind: InvoiceLine['kind']) => (share: Share) =>
  moneyCell(
    share.documents
      .flatMap((document) =>
        document.lines
          .filter((line) => line.job === share.job.job && line.kind === kind)
          .map((line) => signed(document, line.netMinorUnits)),
      )
      .reduce((sum, amount) => sum + amount, 0),
    share.currency,
  );

const shares: readonly Column<Share>[] = [
  { name: 'day', kind: 'date', about: 'Day of the trip.', of: ({ trip }) => trip.day },
  { name: 'job', kind: 'text', about: 'Job that shares the trip.', of: ({ job }) => job.job },
  {
    name: 'distance_from_base',
    kind: 'decimal',
    about: "The job's own distance, where the trip is shared by distance.",
    of: ({ job }) => (job.distance === undefined ? null : plainDecimal(job.distance)),
  },
  {
    name: 'documents',
    kind: 'text',
    about: 'Invoices and credit notes up to the last day of the period that bill the job, parted by a space.',
    of: ({ documents }) => documents.map((document) => document.number).join(' '),
  },
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ currency }) => currency },
  {
    name: 'billed_distance',
    kind: 'money',
    about: 'Travel by distance billed for it, without tax.',
    of: billed('travel distance'),
  },
  { name: 'billed_time', kind: 'money', about: 'Travel time billed for it, without tax.', of: billed('travel time') },
  {
    name: 'billed_tolls_and_parking',
    kind: 'money',
    about: 'Tolls and parking billed for it, without tax.',
    of: billed('tolls and parking'),
  },
];

const rows = (input: ExportInput): readonly Row[] =>
  input.trips
    .toSorted((one, other) => (one.day < other.day ? -1 : 1))
    .map((trip) => ({ trip, currency: input.currency }));

/** One row a trip of the period: the log of distances driven. */
export function tripsTable(input: ExportInput): Table {
  return makeTable('trips', 'One row for each trip of the period: the log of distances driven.', columns, rows(input));
}

/** One row for each job that shares a trip, with what was billed of it. */
export function tripSharesTable(input: ExportInput): Table {
  const byJob = new Map<string, IssuedInvoice[]>();
  for (const document of input.documents.filter((each) => each.issued <= input.to))
    for (const job of new Set(document.lines.map((line) => line.job)))
      if (job !== null) byJob.set(job, [...(byJob.get(job) ?? []), document]);
  return makeTable(
    'trip-shares',
    'One row for each job that shares a trip of the period, with what was billed of the trip; credit notes are taken off.',
    shares,
    rows(input).flatMap((row) =>
      row.trip.jobs.map((job) => ({
        ...row,
        job,
        documents: byJob.get(job.job) ?? [],
      })),
    ),
  );
}
