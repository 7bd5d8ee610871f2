import fc from 'fast-check';
import { meterUncertaintyMillivolts } from '../../src/evidence/meter-uncertainty.ts';
import { type Job, type JobInput, job as jobRecord } from '../../src/records/job.ts';
import type { KeyPosition, WireRole } from '../../src/records/wire-role.ts';

export type ReadingInput = NonNullable<NonNullable<NonNullable<JobInput['probePoints']>[number]['readings']>>[number];
export type Vehicle = { readonly system: 12 | 24; readonly drive: 'combustion' | 'hybrid'; readonly supplied: boolean };

/** What is read: where the key stands, what the black lead touches, whether the lamps are on. */
export type Probe = {
  readonly key: KeyPosition;
  readonly reversed: boolean;
  readonly lamps: boolean;
  readonly waited: number;
};

// 12 V at rest, under the ignition's own load, cranking, charging: TRADE figures, common practice
const supplyAt: Readonly<Record<KeyPosition, number>> = {
  out: 12.6,
  off: 12.6,
  accessory: 12.5,
  on: 12.4,
  crank: 10.4,
  running: 14.1,
};

/** The true roles a wire may have, told by DIN 72552 and common practice, not by the program's own table. */
export const trueRoles = ['constant', 'ignition', 'accessory', 'start', 'ground', 'lighting', 'signal'] as const;
export type TrueRole = (typeof trueRoles)[number];

const live: Readonly<Record<'constant' | 'ignition' | 'accessory' | 'start', readonly KeyPosition[]>> = {
  constant: ['out', 'off', 'accessory', 'on', 'crank', 'running'],
  ignition: ['on', 'crank', 'running'],
  accessory: ['accessory', 'on', 'running'],
  start: ['crank'],
};

/** The volts that a true wire of a role shows. */
export function trueVolts(role: TrueRole, probe: Probe, vehicle: Vehicle): number {
  const supply = (supplyAt[probe.key] * vehicle.system) / 12;
  const fraction = shareOf(role, probe);
  const volts = probe.reversed ? fraction * supply - supply : fraction * supply;
  return Math.round(volts * 1000) / 1000;
}

function shareOf(role: TrueRole, probe: Probe): number {
  if (role === 'ground') return 0;
  if (role === 'lighting') return probe.lamps ? 0.985 : 0;
  if (role === 'signal') return ['accessory', 'on', 'crank', 'running'].includes(probe.key) ? 0.2 : 0;
  return live[role].includes(probe.key) ? 0.985 : 0;
}

/** A true reading of a role in the record's shape. */
export function trueReading(role: TrueRole, probe: Probe, vehicle: Vehicle): ReadingInput {
  return {
    key: probe.key,
    volts: trueVolts(role, probe, vehicle),
    reference: probe.reversed ? 'battery positive' : 'chassis',
    secondsWaited: probe.waited,
    ...(probe.lamps ? { lights: 'on' as const } : {}),
  };
}

/** A job with one wire. */
export function jobWith(vehicle: Vehicle, readings: readonly ReadingInput[], shift: readonly number[] = []): Job {
  const keys = Object.keys(supplyAt) as KeyPosition[];
  const supply = keys.filter((key) => vehicle.drive === 'combustion' || key !== 'crank');
  return jobRecord.parse({
    schema: 'keyout-job-1',
    id: '2026-01-01-AAAA',
    day: '2026-01-01',
    vehicle: { systemVolts: vehicle.system, drive: vehicle.drive },
    supply: vehicle.supplied
      ? supply.map((key, place) => ({ key, volts: noisy((supplyAt[key] * vehicle.system) / 12, shift[place] ?? 0) }))
      : [],
    probePoints: [{ name: 'P1', readings: [...readings] }],
  });
}

/** A reading moved by a share of what an ordinary meter may be off. */
export function noisy(volts: number, share: number): number {
  const unsure = meterUncertaintyMillivolts(Math.round(volts * 1000), null);
  return Math.round(volts * 1000 + Math.trunc(share * unsure)) / 1000;
}

export const vehicles = fc.record({
  system: fc.constantFrom(12 as const, 24 as const),
  drive: fc.constantFrom('combustion' as const, 'hybrid' as const),
  supplied: fc.boolean(),
});

export const probes: fc.Arbitrary<Probe> = fc.record({
  key: fc.constantFrom<KeyPosition>('out', 'off', 'accessory', 'on', 'crank', 'running'),
  reversed: fc.constantFrom(false, false, false, true),
  lamps: fc.constantFrom(false, false, false, true),
  waited: fc.constantFrom(600, 720, 1200),
});

/** The true roles that a vehicle can have: nothing cranks on a hybrid. */
export const rolesOf = (vehicle: Vehicle): readonly TrueRole[] =>
  trueRoles.filter((role) => vehicle.drive === 'combustion' || role !== 'start');

export const isRole = (role: WireRole | 'open', wanted: WireRole) => role === wanted || role === 'open';
