import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Trap, WireEvidence } from './evidence.ts';
import { isOnly, type Levelled, levelled } from './levels-at.ts';
import { isKeyOut, type Surroundings } from './surroundings.ts';

type Pair = { readonly point: ProbePoint; readonly wire: WireEvidence; readonly readings: readonly Levelled[] };

/** What several wires of one job say about each other. */
export function trapsBetweenWires(
  points: readonly ProbePoint[],
  wires: readonly WireEvidence[],
  around: Surroundings,
): readonly Trap[] {
  const pairs = points.flatMap((point, index): readonly Pair[] => {
    const wire = wires[index];
    return wire === undefined ? [] : [{ point, wire, readings: levelled(point, around) }];
  });
  return [...falls(pairs), ...samePin(pairs), ...twoConstants(pairs, around)];
}

/** A wire called constant that falls with the key while another wire holds. */
function falls(pairs: readonly Pair[]): readonly Trap[] {
  const counted = (pair: Pair) => pair.readings.filter((each) => each.void === null && isKeyOut(each.reading.key));
  const holding = pairs.find((pair) => counted(pair).some((each) => isOnly(each.levels, 'supply')));
  if (holding === undefined) return [];
  return pairs
    .filter((pair) => pair.point.verdict === 'constant' && pair.point.name !== holding.point.name)
    .flatMap((pair): readonly Trap[] => {
      const fallen = counted(pair).find((each) => isOnly(each.levels, 'zero', 'between', 'low'))?.reading;
      if (fallen === undefined) return [];
      const facts = { how: 'falls', reading: fallen, holding: holding.point.name } as const;
      return [{ kind: 'contradicts another wire', point: pair.point.name, ...facts }];
    });
}

/** One pin of one connector cannot be two things. */
function samePin(pairs: readonly Pair[]): readonly Trap[] {
  const roleOf = ({ wire }: Pair) => (wire.conclusion.kind === 'concluded' ? wire.conclusion.role : wire.verdict);
  return pairs.flatMap((pair, index): readonly Trap[] => {
    const { connector, pin } = pair.point;
    const other = pairs
      .slice(0, index)
      .find((each) => pin !== undefined && each.point.pin === pin && each.point.connector === connector);
    const [first, second] = [other === undefined ? null : roleOf(other), roleOf(pair)];
    if (other === undefined || pin === undefined || first === null || second === null || first === second) return [];
    return [
      {
        kind: 'contradicts another wire',
        point: pair.point.name,
        how: 'same pin',
        other: other.point.name,
        connector: connector ?? null,
        pin,
        roles: [first, second],
      },
    ];
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
  if (ranked.length < 2) return [];
  const compared = ranked.map(({ pair, switched, wandering, lost, fuse }) => ({
    point: pair.point.name,
    wanders: wandering === 1,
    lostMillivolts: lost,
    fuseAmperes: fuse === 0 ? null : fuse,
    switched: switched === 1,
  }));
  return [{ kind: 'two constants', point: '', constants: compared }];
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
