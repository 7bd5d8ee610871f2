import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Book } from '../records/book.ts';
import type { DeviceLead } from '../records/connection.ts';
import { cranks } from '../records/cranks.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import { nominalVolts } from '../records/nominal-volts.ts';
import { assessFuse } from './assess-fuse.ts';
import { batteryPercent } from './battery-state.ts';
import type { Electrics } from './electrics.ts';
import { continuousDropMillivoltsMax, dropMillivolts } from './lead-drop.ts';
import { leadMilliohmsPerMetre } from './lead-resistance.ts';
import { smallestConductor } from './smallest-conductor.ts';
import { standingDays } from './standing-days.ts';
import { coveredSupplyCodes } from './supply-codes.ts';
import { voltsAtDevice } from './volts-at-device.ts';
import { bundleAmperes } from './wire-ampacity.ts';
import { fuseAmperesMax } from './wire-fuse-limit.ts';

/** Conductors in a warm cab, °C, where the place is not known to be hotter (common practice, no source). */
const warmCelsius = 60;

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
  const system = nominalVolts(job);
  const celsius = Math.max(warmCelsius, job.placement?.expectedCelsiusMax ?? warmCelsius);
  const supplyLead = connectionOf(job, 'supply');
  const supplyDrop = leadDrop(job, profile, 'supply', celsius);
  const returnDrop = leadDrop(job, profile, 'ground', celsius);
  const drop = supplyDrop === null || returnDrop === null ? null : Math.ceil(supplyDrop + returnDrop - 1e-9);
  const point = job.probePoints?.find((each) => each.name === supplyLead?.point);
  const thinnest = smallestConductor([supplyLead?.gauge, profile?.leadGauge]);
  return {
    cranks: cranks(job.vehicle),
    conductorCelsius: celsius,
    supplyDropMillivolts: supplyDrop === null ? null : Math.ceil(supplyDrop - 1e-9),
    returnDropMillivolts: returnDrop === null ? null : Math.ceil(returnDrop - 1e-9),
    leadDropMillivolts: drop,
    leadDropMillivoltsMax: continuousDropMillivoltsMax[system],
    leadLengthMillimetres: lengthOf(job, profile, 'supply'),
    atDevice: drop === null ? [] : voltsAtDevice(point?.readings ?? [], drop),
    supplyMillivoltsMin: profile === null ? null : millivoltsFromVolts(profile.supplyVoltsMin),
    supplyMillivoltsMax: profile === null ? null : millivoltsFromVolts(profile.supplyVoltsMax),
    crankMillivoltsMin: profile?.crankVoltsMin === undefined ? null : millivoltsFromVolts(profile.crankVoltsMin),
    supplyCodes: profile === null ? [] : coveredSupplyCodes(profile.supplyVoltsMin, profile.supplyVoltsMax, system),
    fuseAmperesMax: thinnest === null ? null : fuseAmperesMax(thinnest),
    leadAmperesMax: thinnest === null ? null : bundleAmperes(thinnest),
    fuses: fusesOf(job, profile),
    ...groundOf(job),
    ...standingOf(job, profile, book, system),
  };
}

const connectionOf = (job: Job, lead: DeviceLead) => job.connections?.find((each) => each.lead === lead);

function lengthOf(job: Job, profile: DeviceProfile | null, lead: DeviceLead): number | null {
  const own = connectionOf(job, lead)?.lengthMillimetres;
  return own ?? job.harness?.lengthMillimetres ?? profile?.leadLengthMillimetres ?? null;
}

function leadDrop(job: Job, profile: DeviceProfile | null, lead: DeviceLead, celsius: number): number | null {
  const gauge = connectionOf(job, lead)?.gauge ?? profile?.leadGauge;
  const length = lengthOf(job, profile, lead);
  if (gauge === undefined || length === null || profile === null) return null;
  return dropMillivolts(leadMilliohmsPerMetre(gauge, celsius), length, profile.awakeMilliamps);
}

function fusesOf(job: Job, profile: DeviceProfile | null): Electrics['fuses'] {
  return (job.connections ?? []).flatMap((made) => {
    if (made.fuse === undefined) return [];
    // the ignition lead only senses: its current is far below that of the supply and is not in the profile
    const load = made.lead === 'supply' ? (profile?.awakeMilliamps ?? null) : null;
    const { ratingAmperes, distanceMillimetres } = made.fuse;
    const judged = assessFuse(ratingAmperes, [made.gauge, profile?.leadGauge], load, distanceMillimetres);
    return [{ lead: made.lead, ...judged }];
  });
}

function groundOf(job: Job): Pick<Electrics, 'groundDropMillivolts' | 'groundTestMilliamps'> {
  if (job.ground?.dropMillivolts !== undefined)
    return { groundDropMillivolts: job.ground.dropMillivolts, groundTestMilliamps: job.ground.testMilliamps ?? null };
  const point = job.probePoints?.find((each) => each.name === connectionOf(job, 'ground')?.point);
  const loaded = (point?.readings ?? []).filter((each) => each.reference === 'battery negative' && each.loaded);
  const worst = loaded.toSorted((one, other) => Math.abs(other.volts) - Math.abs(one.volts))[0];
  return {
    groundDropMillivolts: worst === undefined ? null : millivoltsFromVolts(worst.volts),
    groundTestMilliamps: worst?.loadMilliamps ?? null,
  };
}

function standingOf(
  job: Job,
  profile: DeviceProfile | null,
  book: Pick<Book, 'assumedAsleepMilliamps' | 'standingDaysMin'>,
  system: 12 | 24,
): Pick<
  Electrics,
  | 'asleepMilliamps'
  | 'vehicleAsleepMilliamps'
  | 'vehicleAsleepMeasured'
  | 'batteryPercent'
  | 'standingDays'
  | 'standingDaysWanted'
> {
  const vehicleAsleep = job.vehicle.asleepMilliamps ?? Number(book.assumedAsleepMilliamps);
  const asleep = profile === null ? null : profile.asleepMilliamps + vehicleAsleep;
  const capacity = job.vehicle.batteryAmpereHours;
  const rested = [job.before?.restVolts, job.after?.restVolts]
    .filter((volts) => volts !== undefined)
    .map((volts) => batteryPercent(millivoltsFromVolts(volts), system))
    .filter((percent) => percent !== null);
  // surface charge makes a battery look fuller than it is, never emptier
  const percent = rested.length === 0 ? null : Math.min(...rested);
  const known = asleep !== null && asleep > 0 && capacity !== undefined;
  return {
    asleepMilliamps: asleep,
    vehicleAsleepMilliamps: vehicleAsleep,
    vehicleAsleepMeasured: job.vehicle.asleepMilliamps !== undefined,
    batteryPercent: percent,
    standingDays: known ? Math.floor(standingDays(capacity, asleep, percent ?? 100)) : null,
    standingDaysWanted: job.vehicle.standingDays ?? book.standingDaysMin,
  };
}
