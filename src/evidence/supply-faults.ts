import { type KeyPosition, keyPositions } from '../records/wire-role.ts';
import type { Evidence } from './evidence.ts';
import { supplyDisagrees } from './supply-level.ts';

/** At rest no battery reads more than this, 12 V: surface charge after a drive is gone below it (common practice, no source). */
const restMillivoltsMax = 14_000;
/** Below this at rest there is no battery at the probes that would wake a control unit, 12 V (common practice, no source). */
const restMillivoltsMin = 6000;

/** Why nothing follows from the supply's own readings in one key position. */
export type SupplyFault = {
  readonly kind: 'disagrees' | 'reads nothing' | 'too high at rest' | 'leads swapped';
  readonly key: KeyPosition;
  readonly millivolts: number;
};

/**
 * Where the supply's own readings contradict each other or cannot be a battery's: the meter in the wrong place, on AC, with a low
 * battery of its own, or its leads swapped. Then no wire may be proven by comparing with them.
 * @param supply the supply in each key position
 * @param system nominal volts
 */
export function supplyFaults(supply: Evidence['supply'], system: 12 | 24): readonly SupplyFault[] {
  const scale = system / 12;
  return keyPositions.flatMap((key): readonly SupplyFault[] => {
    const own = supply[key];
    if (own === undefined) return [];
    const { millivolts, from } = own;
    if (supplyDisagrees(key, from, system)) return [{ kind: 'disagrees', key, millivolts }];
    if (millivolts < -1000 * scale) return [{ kind: 'leads swapped', key, millivolts }];
    if (millivolts < (key === 'crank' ? 2000 : restMillivoltsMin) * scale)
      return [{ kind: 'reads nothing', key, millivolts }];
    // a converter charges a hybrid's battery as soon as it is on
    const rests = key === 'out' || key === 'off';
    return rests && millivolts > restMillivoltsMax * scale ? [{ kind: 'too high at rest', key, millivolts }] : [];
  });
}
