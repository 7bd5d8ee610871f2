import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { Job } from '../records/job.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Evidence, Trap } from './evidence.ts';
import { measuredLevel } from './supply-level.ts';
import { retainedPowerSeconds, reversed, type Surroundings, where } from './test-roles.ts';

const written = (volts: number) => `${writeVolts(millivoltsFromVolts(volts))} V`;

/** What a fitter must mind in the readings of one wire. */
export function trapsOfWire(point: ProbePoint, around: Surroundings): readonly Trap[] {
  const traps: Trap[] = [];
  const add = (kind: Trap['kind'], sentence: string) => traps.push({ kind, point: point.name, sentence });
  for (const reading of point.readings.filter((each) => each.taken === 'before')) {
    if (reversed(reading)) {
      if (reading.volts > 1)
        add(
          'wrong reference',
          `${point.name} reads ${written(reading.volts)} against a live wire: the leads may be swapped, or the reference was not live.`,
        );
      continue;
    }
    const level = measuredLevel(reading, around.supply, around.system, around.meterOf(reading));
    const keyIsOut = reading.key === 'out' || reading.key === 'off';
    if (keyIsOut && level !== 'zero' && (reading.secondsWaited ?? 0) < retainedPowerSeconds)
      add(
        'retained power',
        `${point.name} was read ${reading.secondsWaited ?? 0} s after key out: power may be kept on for minutes, so wait ${retainedPowerSeconds} s and read again.`,
      );
    if (level === 'negative')
      add(
        'wrong reference',
        `${point.name} reads ${written(reading.volts)} ${where(reading.key)}: the black lead was on something live.`,
      );
    if (level === 'above')
      add(
        'wrong reference',
        `${point.name} reads ${written(reading.volts)} ${where(reading.key)}, more than the supply: one of the two is wrong.`,
      );
    if (!reading.steady) add('unsteady', `${point.name} wandered ${where(reading.key)}: a signal, or a loose probe.`);
    if (level === 'between' && !keyIsOut)
      add(
        'average of a signal',
        `${point.name} reads ${written(reading.volts)} ${where(reading.key)}, neither supply nor nothing: an average of a signal or a floating wire. Never splice it.`,
      );
    if (
      reading.key === 'crank' &&
      level === 'zero' &&
      point.readings.some(
        (each) =>
          each.key === 'on' && measuredLevel(each, around.supply, around.system, around.meterOf(each)) === 'supply',
      )
    )
      add(
        'drops in crank',
        `${point.name} falls to nothing while cranking: no ignition feed in the sense of terminal 15.`,
      );
  }
  for (const loaded of point.readings.filter((each) => each.loaded && !reversed(each))) {
    const unloaded = point.readings.find((each) => !each.loaded && each.key === loaded.key && !reversed(each));
    if (unloaded !== undefined && unloaded.volts - loaded.volts > around.system / 12 && unloaded.volts > 5)
      add(
        'signal only',
        `${point.name} falls from ${written(unloaded.volts)} to ${written(loaded.volts)} under load: it carries a signal, not a supply.`,
      );
  }
  return traps;
}

/** What concerns the whole job. */
export function trapsOfJob(job: Job, supply: Evidence['supply'], system: 12 | 24 | null): readonly Trap[] {
  const traps: Trap[] = [];
  if ((job.probePoints ?? []).length > 0 && Object.keys(supply).length === 0)
    traps.push({
      kind: 'supply not measured',
      point: '',
      sentence: 'The supply itself was not measured: levels can only be judged by their order of size.',
    });
  if (system !== null && job.vehicle.systemVolts !== undefined && system !== job.vehicle.systemVolts)
    traps.push({
      kind: 'system differs',
      point: '',
      sentence: `The readings show a ${system} V system, the record says ${job.vehicle.systemVolts} V.`,
    });
  for (const [key, each] of Object.entries(supply)) {
    if (each.millivolts > ((system ?? 12) === 24 ? 30_000 : 15_000))
      traps.push({
        kind: 'over-voltage',
        point: '',
        sentence: `The supply reads ${writeVolts(each.millivolts)} V (${key}): over-voltage, look at the regulator first.`,
      });
  }
  return traps;
}
