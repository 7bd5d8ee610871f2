import { writeVolts } from '../quantities/millivolts.ts';
import type { Job } from '../records/job.ts';
import { keyPositions } from '../records/wire-role.ts';
import type { Evidence, Trap } from './evidence.ts';
import { where } from './key-words.ts';
import { overVoltageMillivolts, supplyDisagrees } from './supply-level.ts';
import type { Surroundings } from './surroundings.ts';

/** What must be minded about the supply itself: not measured, another system than recorded, too high, or contradicting itself. */
export function trapsOfSupply(
  job: Job,
  supply: Evidence['supply'],
  found: 12 | 24 | null,
  around: Surroundings,
): readonly Trap[] {
  const traps: Trap[] = [];
  const add = (kind: Trap['kind'], sentence: string) => traps.push({ kind, point: '', sentence });
  if ((job.probePoints ?? []).length > 0 && Object.keys(supply).length === 0)
    add(
      'supply not measured',
      'The supply itself was not measured: levels can only be judged by their order of size. Read it at the battery in each key position.',
    );
  if (found !== null && job.vehicle.systemVolts !== undefined && found !== job.vehicle.systemVolts)
    add('system differs', `The readings show a ${found} V system, the record says ${job.vehicle.systemVolts} V.`);
  for (const key of keyPositions) {
    const each = supply[key];
    if (each === undefined) continue;
    const position = where(key, around.words);
    if (each.millivolts > (overVoltageMillivolts * around.system) / 12)
      add(
        'over-voltage',
        `The supply reads ${writeVolts(each.millivolts)} V ${position}: over-voltage, look at the regulator first.`,
      );
    if (supplyDisagrees(key, each.from, around.system))
      add('readings disagree', `The supply was read with very different volts ${position}: one of them is wrong.`);
    if (each.from.some((reading) => !reading.steady))
      add('unsteady', `The supply wandered ${position}: a loose probe, or a poor battery connection.`);
  }
  return traps;
}
