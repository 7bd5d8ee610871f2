import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import type { Conclusion, Trap } from './evidence.ts';
import { feedsAreLive, isGroundDrop, reversedLevels } from './ground-test.ts';
import { endOfDrive, where, writeWait } from './key-words.ts';
import { isOnly, type Levelled, levelGroups, levelled, mayBeCutOff } from './levels-at.ts';
import { fallsUnderLoad, isGhost } from './load-comparison.ts';
import { referenceTraps } from './reference-traps.ts';
import { type Found, type Seen, written } from './seen-wire.ts';
import { overVoltageMillivolts } from './supply-level.ts';
import { isKeyOut, retainedPowerSeconds, reversed, type Surroundings } from './surroundings.ts';
import { keptPower } from './test-roles.ts';

/** What a fitter must mind in the readings of one wire, each thing once. */
export function trapsOfWire(point: ProbePoint, conclusion: Conclusion, around: Surroundings): readonly Trap[] {
  const readings = levelled(point, around);
  const seen: Seen = { point, readings, groups: levelGroups(readings), conclusion, around };
  const found = [keptAlive, low, dropsInCrank, underLoad, odd, half, referenceTraps, isolator, tooHigh, wandering];
  return [...found, disagreeing, throughLoad]
    .flatMap((look) => look(seen))
    .map(([kind, sentence]) => ({ kind, point: point.name, sentence }));
}

function keptAlive({ point, readings, around }: Seen): Found {
  const kept = keptPower(readings);
  const from = endOfDrive(around.words);
  const longest = kept.toSorted((one, other) => (other.secondsWaited ?? 0) - (one.secondsWaited ?? 0))[0];
  if (longest !== undefined)
    return [
      [
        'delayed power',
        `${point.name} still reads ${written(longest)} ${writeWait(longest.secondsWaited ?? 0)} after ${from} and falls later: delayed power, not terminal 15.`,
      ],
    ];
  // a later reading that counts has answered the question
  const early = readings.filter((each) => each.void === 'retained power' && !answered(each, readings));
  const last = early.toSorted((one, other) => (other.reading.secondsWaited ?? 0) - (one.reading.secondsWaited ?? 0))[0];
  if (last === undefined) return [];
  const waited = last.reading.secondsWaited;
  return [
    [
      'retained power',
      `${point.name} reads ${written(last.reading)} ${waited === undefined ? `after ${from}, the wait not recorded` : `${writeWait(waited)} after ${from}`}: power may be kept on for minutes, so wait ${writeWait(retainedPowerSeconds)} and read again.`,
    ],
  ];
}

const answered = (early: Levelled, readings: readonly Levelled[]) =>
  readings.some(
    (each) =>
      each.void === null &&
      each.reading.key === early.reading.key &&
      (each.reading.secondsWaited ?? 0) >= (early.reading.secondsWaited ?? 0),
  );

function low({ point, readings, around }: Seen): Found {
  const behind = readings.filter((each) => {
    const supply = around.supply[each.reading.key];
    if (each.void !== null || each.reading.loaded || each.reading.key === 'crank') return false;
    const range = around.rangeAt(each.reading.key);
    if (isOnly(each.levels, 'low')) return true;
    if (!range.measured || supply === undefined || !isOnly(each.levels, 'low', 'supply')) return false;
    // a few tenths, beyond what the meter may be off twice
    const least = Math.min(...supply.from.map((one) => millivoltsFromVolts(one.volts)));
    const lost = least - millivoltsFromVolts(each.reading.volts);
    return lost > (250 * around.system) / 12 + range.unsure;
  });
  const most = behind[0];
  if (most === undefined) return [];
  const position = where(most.reading.key, around.words);
  const supply = around.supply[most.reading.key];
  const against =
    supply === undefined
      ? 'where a supply would show more'
      : `where the supply shows ${writeVolts(supply.millivolts)} V`;
  const moved = most.reading.key === 'running' ? ' Smart charging also moves it: read both at the same moment.' : '';
  return [
    [
      'reads low',
      `${point.name} reads ${written(most.reading)} ${position} ${against}: an accessory line, a loaded circuit or a poor contact. Prefer a wire with full volts.${moved}`,
    ],
  ];
}

function dropsInCrank({ point, groups, conclusion, around }: Seen): Found {
  const isLamp = conclusion.kind === 'concluded' && conclusion.role === 'lighting';
  if (!around.cranks || isLamp) return [];
  const falls = groups.some(
    (group) =>
      group.key === 'crank' &&
      isOnly(group.levels, 'zero') &&
      groups.some((each) => each.lights === group.lights && isOnly(each.levels, 'supply')),
  );
  return falls
    ? [
        [
          'drops in crank',
          `${point.name} falls to nothing while cranking: no ignition feed in the sense of terminal 15.`,
        ],
      ]
    : [];
}

function underLoad({ point, around }: Seen): Found {
  const pair = fallsUnderLoad(point, around)[0];
  if (pair === undefined) return [];
  return [
    [
      'signal only',
      `${point.name} falls from ${written(pair.unloaded)} to ${written(pair.loaded)} under load ${where(pair.loaded.key, around.words)}: it carries a signal, or a poor contact feeds it. It is no supply.`,
    ],
  ];
}

function odd(seen: Seen): Found {
  const { point, groups, around } = seen;
  const group = groups.find((each) => !isKeyOut(each.key) && !each.loaded && isOnly(each.levels, 'between'));
  const reading = group?.counted[0]?.reading;
  if (isGhost(seen.readings) && halfReading(seen) === undefined)
    return [
      [
        'ghost volts',
        `${point.name} shows ${reading === undefined ? 'odd volts' : written(reading)} that nothing feeds: a floating wire on a high-impedance meter, or a line that never sleeps. It proves nothing; never splice it.`,
      ],
    ];
  if (reading !== undefined && !isGhost(seen.readings))
    return [
      [
        'average of a signal',
        `${point.name} reads ${written(reading)} ${where(reading.key, around.words)}, neither supply nor nothing: ${point.twisted ? 'one of a twisted pair, a data line' : 'the average of a data line or a pulse-width output, or a floating wire'}. Never splice it.`,
      ],
    ];
  return point.twisted
    ? [
        [
          'average of a signal',
          `${point.name} is one of a twisted pair: a data line, whatever it reads. Never splice it.`,
        ],
      ]
    : [];
}

function halfReading({ readings, around }: Seen) {
  return readings.find((each) => {
    const supply = around.supply[each.reading.key]?.millivolts;
    if (around.system !== 24 || supply === undefined || !each.reading.steady || !isOnly(each.levels, 'between'))
      return false;
    return Math.abs(millivoltsFromVolts(each.reading.volts) - supply / 2) < 1000;
  })?.reading;
}

function half(seen: Seen): Found {
  const reading = halfReading(seen);
  if (reading === undefined) return [];
  return [
    [
      'half the supply',
      `${seen.point.name} reads ${written(reading)}, half of the 24 V supply: the tap between two batteries, or a converter's output. Joined to it, a device pulls one battery down.`,
    ],
  ];
}

function isolator({ point, readings, conclusion, around }: Seen): Found {
  const open = readings.filter((each) => each.reading.isolator === 'open');
  const dead = open.find((each) => isOnly(each.levels, 'zero'));
  if (dead !== undefined)
    return [
      [
        'isolator side',
        `${point.name} is dead with the isolator open (${written(dead.reading)}): it is on the switched side, and a device on it sleeps with the vehicle.`,
      ],
    ];
  const couldBeConstant = conclusion.kind === 'open' && conclusion.remaining.includes('constant');
  if (couldBeConstant && readings.some((each) => mayBeCutOff(each.reading, point, around)))
    return [
      [
        'isolator side',
        `${point.name} is on the switched side of the isolator: that it is dead with the key out proves nothing until the isolator is recorded as closed.`,
      ],
    ];
  if (!around.hasIsolator || open.length > 0) return [];
  const live = readings.some((each) => each.reading.key === 'out' && isOnly(each.levels, 'supply'));
  if (!live || point.isolatorSide === 'battery') return [];
  return [
    [
      'isolator side',
      `${point.name} is live with the key out, ${point.isolatorSide === 'switched' ? 'on the switched side of the isolator: it goes dead when the isolator is opened' : 'and the vehicle has an isolator: read it with the isolator open to know its side'}.`,
    ],
  ];
}

function tooHigh({ point, readings, around }: Seen): Found {
  const limit = (overVoltageMillivolts * around.system) / 12;
  const supplied = Object.values(around.supply).some((each) => each.millivolts > limit);
  const reading = readings.find(
    (each) => each.void === null && each.reading.key === 'running' && millivoltsFromVolts(each.reading.volts) > limit,
  )?.reading;
  return reading === undefined || supplied
    ? []
    : [
        [
          'over-voltage',
          `${point.name} reads ${written(reading)} ${where(reading.key, around.words)}: over-voltage, look at the regulator first.`,
        ],
      ];
}

function wandering({ point, readings, around }: Seen): Found {
  const reading = readings.find((each) => !each.reading.steady)?.reading;
  return reading === undefined
    ? []
    : [['unsteady', `${point.name} wandered ${where(reading.key, around.words)}: a signal, or a loose probe.`]];
}

function disagreeing({ point, groups, around }: Seen): Found {
  const group = groups.find((each) => {
    const definite = new Set(each.counted.filter((one) => one.levels.length === 1).flatMap((one) => one.levels));
    return definite.size > 1 && !(definite.size === 2 && definite.has('low') && !definite.has('zero'));
  });
  if (group === undefined) return [];
  const volts = group.counted.map((each) => written(each.reading)).join(' and ');
  return [
    [
      'readings disagree',
      `${point.name} was read as ${volts} ${where(group.key, around.words)}: one of them is wrong, read it again.`,
    ],
  ];
}

function throughLoad({ point, conclusion, around }: Seen): Found {
  const dead = point.readings.find(
    (reading) => reversed(reading) && !feedsAreLive(reading) && isOnly(reversedLevels(reading, around), 'supply'),
  );
  if (dead !== undefined && conclusion.kind === 'open')
    return [
      [
        'through a load',
        `${point.name} shows the supply against a live wire ${where(dead.key, around.words)}; so does every feed that is dead then, through what it feeds. Read it ${where('on', around.words)}.`,
      ],
    ];
  if (conclusion.kind === 'open' || conclusion.role !== 'ground' || point.pin === undefined) return [];
  return point.readings.some(isGroundDrop) || !point.readings.some(reversed)
    ? []
    : [
        [
          'through a load',
          `${point.name} shows the supply against a live wire, as a ground does; a lamp or a coil to ground would too. Read its drop while the device draws current.`,
        ],
      ];
}
