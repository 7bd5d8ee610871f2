import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Trap, WireEvidence } from './evidence.ts';
import { where } from './key-words.ts';
import { isOnly, type Levelled, levelled } from './levels-at.ts';
import { isKeyOut, type Surroundings } from './surroundings.ts';

type Pair = { readonly point: ProbePoint; readonly wire: WireEvidence; readonly readings: readonly Levelled[] };

/** What several wires of one job say about each other. */
export function trapsBetweenWires(
  points: readonly ProbePoint[],
  wires: readonly WireEvidence[],
  around: Surroundings,
): readonly Trap[] {
  const pairs = points.flatMap((point, place): readonly Pair[] => {
    const wire = wires[place];
    return wire === undefined ? [] : [{ point, wire, readings: levelled(point, around) }];
  });
  return [...falls(pairs, around), ...samePin(pairs), ...twoConstants(pairs, around)];
}

/** A wire called constant that falls with the key while another wire holds. */
function falls(pairs: readonly Pair[], around: Surroundings): readonly Trap[] {
  const counted = (pair: Pair) => pair.readings.filter((each) => each.void === null && isKeyOut(each.reading.key));
  const holding = pairs.find((pair) => counted(pair).some((each) => isOnly(each.levels, 'supply')));
  if (holding === undefined) return [];
  return pairs
    .filter((pair) => pair.point.verdict === 'constant' && pair.point.name !== holding.point.name)
    .flatMap((pair): readonly Trap[] => {
      const fallen = counted(pair).find((each) => isOnly(each.levels, 'zero', 'between', 'low'))?.reading;
      if (fallen === undefined) return [];
      const volts = writeVolts(millivoltsFromVolts(fallen.volts));
      const sentence = `${pair.point.name} is called constant but reads ${volts} V ${where(fallen.key, around.words)}, where ${holding.point.name} holds the supply.`;
      return [{ kind: 'contradicts another wire', point: pair.point.name, sentence }];
    });
}

/** One pin of one connector cannot be two things. */
function samePin(pairs: readonly Pair[]): readonly Trap[] {
  const roleOf = ({ wire }: Pair) => (wire.conclusion.kind === 'concluded' ? wire.conclusion.role : wire.verdict);
  return pairs.flatMap((pair, place) => {
    const { connector, pin } = pair.point;
    const other = pairs
      .slice(0, place)
      .find((each) => pin !== undefined && each.point.pin === pin && each.point.connector === connector);
    const roles = [other === undefined ? null : roleOf(other), roleOf(pair)] as const;
    if (other === undefined || roles[0] === null || roles[1] === null || roles[0] === roles[1]) return [];
    const sentence = `${pair.point.name} and ${other.point.name} are the same pin (${connector ?? 'no connector named'}, ${pin}) and cannot be both ${roles[0]} and ${roles[1]}.`;
    return [{ kind: 'contradicts another wire', point: pair.point.name, sentence }];
  });
}

/** Two constants are compared by their side of the isolator, steadiness, volts lost and fuse. */
function twoConstants(pairs: readonly Pair[], around: Surroundings): readonly Trap[] {
  const constants = pairs.filter(
    (pair) => pair.wire.conclusion.kind === 'concluded' && pair.wire.conclusion.role === 'constant',
  );
  const ranked = constants
    .map((pair) => ({
      pair,
      switched: pair.point.isolatorSide === 'switched' ? 1 : 0,
      wandering: pair.readings.some((each) => !each.reading.steady) ? 1 : 0,
      lost: mostLost(pair, around),
      fuse: pair.point.vehicleFuseAmperes ?? 0,
    }))
    .toSorted(
      (one, other) =>
        one.switched - other.switched ||
        one.wandering - other.wandering ||
        other.fuse - one.fuse ||
        one.lost - other.lost ||
        one.pair.point.name.localeCompare(other.pair.point.name, 'en'),
    );
  const best = ranked[0];
  if (best === undefined || ranked.length < 2) return [];
  const said = ranked.map(
    ({ pair, switched, wandering, lost, fuse }) =>
      `${pair.point.name} ${wandering ? 'wanders' : 'is steady'}, loses up to ${writeVolts(lost)} V, ${fuse === 0 ? 'its fuse is not known' : `is fused at ${fuse} A`}${switched ? ', on the switched side of the isolator' : ''}`,
  );
  const sentence = `${ranked.length} constants: ${said.join('; ')}. ${best.pair.point.name} is the better source.`;
  return [{ kind: 'two constants', point: '', sentence }];
}

/** The most that a wire read below the supply outside cranking, in millivolts. */
function mostLost({ readings }: Pair, around: Surroundings): number {
  const lost = readings
    .filter((each) => each.void === null && each.reading.key !== 'crank')
    .map(({ reading }) => {
      const volts = millivoltsFromVolts(reading.volts);
      return (around.supply[reading.key]?.millivolts ?? volts) - volts;
    });
  return Math.max(0, ...lost);
}
