import type { Job } from '../records/job.ts';

/** The parts of a record that its kind of visit needs and that are still absent. */
export function missingParts(job: Job): readonly string[] {
  const { identity, vehicle } = job;
  const named = vehicle.vin ?? vehicle.plate ?? vehicle.unitNumber;
  const always: readonly [string, unknown][] = [
    ['payer', identity.payer],
    ['customer', identity.customer],
    ['visit', identity.visit],
    ['vehicle', named],
    ['labour', job.labour],
  ];
  const fitting: readonly [string, unknown][] = [
    ['condition before', job.before],
    ['condition after', job.after],
    ['device', job.device],
    ['supply readings', job.supply],
    ['probe points', job.probePoints],
    ['connections', job.connections],
    ['placement', job.placement],
    ['harness', job.harness],
  ];
  const leads = (['supply', 'ignition', 'ground'] as const).map((lead): [string, unknown] => [
    `${lead} lead`,
    job.connections?.find((made) => made.lead === lead),
  ]);
  const wanted =
    identity.visit === 'wasted visit'
      ? [...always, ['reason of the wasted visit', identity.wastedBecause] as const]
      : identity.visit === 'new fit' || identity.visit === 'swap'
        ? [...always, ...fitting, ...(job.connections === undefined ? [] : leads)]
        : [...always, ...fitting.slice(0, 2)];
  return wanted
    .filter(([, value]) => value === undefined || (Array.isArray(value) && value.length === 0))
    .map(([name]) => name);
}
