import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import { knownVolts } from '../records/nominal-volts.ts';
import type { JobFacts } from '../rules/job-facts.ts';
import type { Writing } from '../words/writing.ts';
import { isRemoval } from './summary-sentences.ts';

/** A labelled fact of a head. */
export type HeadFact = { readonly name: string; readonly text: string; readonly isMono: boolean };

const fact = (name: string, text: string | undefined, isMono = false): readonly HeadFact[] =>
  text === undefined ? [] : [{ name, text, isMono }];

/** Who, when and where: the first block under the title. */
export function jobFacts({ job, payer, book }: JobFacts, writing: Writing): readonly HeadFact[] {
  const { labels, terms } = writing;
  const { identity } = job;
  return [
    ...fact(labels.job, job.id),
    ...fact(labels.date, writing.date(job.day)),
    ...fact(labels.place, identity.place),
    ...fact(labels.visit, identity.visit === undefined ? undefined : terms.visits[identity.visit]),
    ...fact(labels.owner, identity.customer?.name ?? terms.notRecorded),
    ...fact(labels.orderedBy, payer?.name),
    ...fact(labels.purchaseOrder, identity.purchaseOrder),
    ...fact(labels.installer, identity.installer ?? book.business.installer),
  ];
}

/** What the vehicle is known by; what a sheet must not be silent about is said to be missing. */
export function vehicleFacts(job: Job, writing: Writing): readonly HeadFact[] {
  const { vehicle, identity } = job;
  const volts = vehicle.systemVolts ?? knownVolts(job);
  const { labels, terms, sentences } = writing;
  const known = identity.visit === 'wasted visit' ? undefined : terms.notRecorded;
  const odometer =
    vehicle.odometer === undefined
      ? known
      : `${writing.whole(vehicle.odometer.value)} ${terms.units[vehicle.odometer.unit]}`;
  return [
    ...fact(labels.vin, vehicle.vin ?? (vehicle.class === 'plant' ? undefined : known), true),
    ...fact(labels.plate, vehicle.plate),
    ...fact(labels.unit, vehicle.unitNumber),
    ...fact(vehicle.odometer?.unit === 'h' ? labels.hourMeter : labels.odometer, odometer),
    ...fact(
      labels.system,
      volts === null
        ? undefined
        : sentences.system(String(volts), vehicle.drive === undefined ? null : terms.drives[vehicle.drive]),
    ),
  ];
}

/** What the device is known by. */
export function deviceFacts(job: Job, profile: DeviceProfile | null, { labels, terms }: Writing): readonly HeadFact[] {
  const { device } = job;
  if (device === undefined) return [];
  const name =
    profile === null ? device.profile : [profile.name, profile.maker].filter((word) => word !== undefined).join(', ');
  return [
    ...fact(labels.device, name),
    ...fact(
      labels.serial,
      device.serial ?? (isRemoval(job) ? device.removedSerial : undefined) ?? terms.notRecorded,
      true,
    ),
    ...fact(labels.imei, device.imei, true),
  ];
}
