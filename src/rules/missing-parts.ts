import type { DeviceLead } from '../records/connection.ts';
import type { Job } from '../records/job.ts';

/** A part of a record, by its name. */
export type RecordPart =
  | 'payer'
  | 'customer'
  | 'visit'
  | 'vehicle'
  | 'labour'
  | 'condition before'
  | 'condition after'
  | 'device'
  | 'supply readings'
  | 'probe points'
  | 'connections'
  | 'placement'
  | 'harness'
  | `${DeviceLead} lead`
  | 'reason of the wasted visit';

type Part = readonly [RecordPart, unknown];

/** The parts of a record that its kind of visit needs and that are still absent. */
export function missingParts(job: Job): readonly RecordPart[] {
  const { identity, vehicle } = job;
  const named = vehicle.vin ?? vehicle.plate ?? vehicle.unitNumber;
  const always: readonly Part[] = [
    ['payer', identity.payer],
    ['customer', identity.customer],
    ['visit', identity.visit],
    ['vehicle', named],
    ['labour', job.labour],
  ];
  const fitting: readonly Part[] = [
    ['condition before', job.before],
    ['condition after', job.after],
    ['device', job.device],
    ['supply readings', job.supply],
    ['probe points', job.probePoints],
    ['connections', job.connections],
    ['placement', job.placement],
    ['harness', job.harness],
  ];
  const leads = (['supply', 'ignition', 'ground'] as const).map(
    (lead): Part => [`${lead} lead`, job.connections?.find((made) => made.lead === lead)],
  );
  const wanted: readonly Part[] =
    identity.visit === 'wasted visit'
      ? [...always, ['reason of the wasted visit', identity.wastedBecause]]
      : identity.visit === 'new fit' || identity.visit === 'swap'
        ? [...always, ...fitting, ...(job.connections === undefined ? [] : leads)]
        : [...always, ...fitting.slice(0, 2)];
  return wanted
    .filter(([, value]) => value === undefined || (Array.isArray(value) && value.length === 0))
    .map(([name]) => name);
}
