import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { Job } from './job.ts';

// 12 V systems stay below 16 V (ISO 16750-2, codes A to D), 24 V systems rest above 18 V (code H)
const is12 = (millivolts: number) => millivolts > 9000 && millivolts < 16_500;
const is24 = (millivolts: number) => millivolts > 18_000 && millivolts < 33_000;

function agreed(millivolts: readonly number[]): 12 | 24 | null {
  if (millivolts.length === 0) return null;
  if (millivolts.every(is12)) return 12;
  return millivolts.every(is24) ? 24 : null;
}

/** The nominal volts that readings at supply level show, or null where they do not tell. */
export function systemFrom(job: Job): 12 | 24 | null {
  const before = (job.supply ?? []).filter((reading) => reading.taken === 'before' && reading.key !== 'crank');
  const rest = before.map((reading) => millivoltsFromVolts(reading.volts));
  if (rest.length > 0) return agreed(rest);
  const wires = (job.probePoints ?? []).flatMap((point) => point.readings).filter((each) => each.key !== 'crank');
  const most = Math.max(0, ...wires.map((each) => Math.abs(millivoltsFromVolts(each.volts))));
  return agreed([most]);
}

/**
 * The nominal volts of a job's system as far as anything tells: what was read, else what is recorded, else the battery's own
 * volts at rest and charging; null where nothing tells.
 */
export function knownVolts(job: Job): 12 | 24 | null {
  const battery = [job.before, job.after].flatMap((state) => [state?.restVolts, state?.chargingVolts]);
  return (
    systemFrom(job) ??
    job.vehicle.systemVolts ??
    agreed(battery.filter((volts) => volts !== undefined).map(millivoltsFromVolts))
  );
}

/** The nominal volts that proof, rules and electrics work with: 12 where nothing tells. */
export const nominalVolts = (job: Job): 12 | 24 => knownVolts(job) ?? 12;
