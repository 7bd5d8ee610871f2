import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Book } from '../records/book.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import type { Electrics } from './electrics.ts';
import { standingDays } from './standing-days.ts';
import { fuseAmperesMax } from './wire-fuse-limit.ts';
import { milliohmsPerMetre } from './wire-resistance.ts';

/**
 * Drop, volts at the device, fuse limit, ground drop and standing time of a job.
 * @param job the job
 * @param profile the device, or null when none is named
 * @param book what is assumed where the vehicle was not measured
 */
export function workOutElectrics(
  job: Job,
  profile: DeviceProfile | null,
  book: Pick<Book, 'assumedAsleepMilliamps' | 'standingDaysMin'>,
): Electrics {
  const supplyLead = job.connections?.find((each) => each.lead === 'supply');
  const gauge = supplyLead?.gauge ?? profile?.leadGauge;
  const length =
    supplyLead?.lengthMillimetres ?? job.harness?.lengthMillimetres ?? profile?.leadLengthMillimetres ?? null;
  // out and back: supply lead and its return
  const drop =
    gauge === undefined || length === null || profile === null
      ? null
      : Math.ceil((milliohmsPerMetre(gauge, 60) * 2 * length * profile.awakeMilliamps) / 1_000_000);
  const point = job.probePoints?.find((each) => each.name === supplyLead?.point);
  const readings = (point?.readings ?? []).filter((each) => each.reference === 'chassis' && each.taken === 'before');
  const vehicleAsleep = job.vehicle.asleepMilliamps ?? Number(book.assumedAsleepMilliamps);
  const asleep = profile === null ? null : profile.asleepMilliamps + vehicleAsleep;
  const capacity = job.vehicle.batteryAmpereHours;
  return {
    leadDropMillivolts: drop,
    leadLengthMillimetres: length,
    atDevice:
      drop === null
        ? []
        : readings.map((each) => ({ key: each.key, millivolts: millivoltsFromVolts(each.volts) - drop })),
    supplyMillivoltsMin: profile === null ? null : millivoltsFromVolts(profile.supplyVoltsMin),
    supplyMillivoltsMax: profile === null ? null : millivoltsFromVolts(profile.supplyVoltsMax),
    crankMillivoltsMin: profile?.crankVoltsMin === undefined ? null : millivoltsFromVolts(profile.crankVoltsMin),
    fuseAmperesMax: gauge === undefined ? null : fuseAmperesMax(gauge),
    groundDropMillivolts: job.ground?.dropMillivolts ?? null,
    groundTestMilliamps: job.ground?.testMilliamps ?? null,
    asleepMilliamps: asleep,
    vehicleAsleepMilliamps: vehicleAsleep,
    vehicleAsleepMeasured: job.vehicle.asleepMilliamps !== undefined,
    standingDays:
      asleep === null || asleep <= 0 || capacity === undefined ? null : Math.floor(standingDays(capacity, asleep)),
    standingDaysWanted: job.vehicle.standingDays ?? book.standingDaysMin,
  };
}
