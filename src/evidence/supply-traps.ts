import type { Job } from '../records/job.ts';
import { keyPositions } from '../records/wire-role.ts';
import { overVoltageMillivolts } from './electrical-limits.ts';
import type { Evidence, Trap, TrapFacts } from './evidence.ts';
import { supplyFaults } from './supply-faults.ts';
import type { Surroundings } from './surroundings.ts';

/** What must be minded about the supply itself: not measured, another system than recorded, too high, or contradicting itself. */
export function trapsOfSupply(
  job: Job,
  supply: Evidence['supply'],
  found: 12 | 24 | null,
  around: Surroundings,
): readonly Trap[] {
  const traps: Trap[] = [];
  const add = (facts: TrapFacts) => traps.push({ ...facts, point: '' });
  if ((job.probePoints ?? []).length > 0 && Object.keys(supply).length === 0) add({ kind: 'supply not measured' });
  if (found !== null && job.vehicle.systemVolts !== undefined && found !== job.vehicle.systemVolts)
    add({ kind: 'system differs', found, recorded: job.vehicle.systemVolts });
  for (const fault of supplyFaults(supply, around.system))
    add(
      fault.kind === 'disagrees'
        ? {
            kind: 'readings disagree',
            key: fault.key,
            volts: (supply[fault.key]?.from ?? []).map((each) => each.volts),
          }
        : { kind: 'no battery', how: fault.kind, key: fault.key, millivolts: fault.millivolts },
    );
  for (const key of keyPositions) {
    const each = supply[key];
    if (each === undefined) continue;
    if (each.millivolts > overVoltageMillivolts[around.system])
      add({ kind: 'over-voltage', key, millivolts: each.millivolts });
    if (each.from.some((reading) => !reading.steady)) add({ kind: 'unsteady', key });
  }
  return traps;
}
