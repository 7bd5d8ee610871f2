import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import type { Job } from '../../src/records/job.ts';
import { jobOfLine, readMatrix, saidOf } from './read-matrix.ts';
import {
  isRole,
  jobWith,
  noisy,
  probes,
  type ReadingInput,
  rolesOf,
  trueReading,
  type trueRoles,
  type Vehicle,
  vehicles,
} from './true-wire.ts';

const lines = ['twelve-volt-wires.txt', 'other-vehicles.txt', 'several-wires.txt', 'hard-yards.txt'].flatMap(
  readMatrix,
);
const conclusionOf = (job: Job) => {
  const conclusion = identifyWires(job, []).wires[0]?.conclusion;
  return conclusion?.kind === 'concluded' ? conclusion.role : 'open';
};
const trueWires = vehicles.chain((vehicle) =>
  fc.record({
    vehicle: fc.constant(vehicle),
    role: fc.constantFrom(...rolesOf(vehicle)),
    probes: fc.array(probes, { maxLength: 7 }),
    more: probes,
  }),
);

describe('what must hold of every conclusion', () => {
  test('readings of a true wire prove its role or nothing, and another one never turns it into another role', () => {
    fc.assert(
      fc.property(trueWires, ({ vehicle, role, probes, more }) => {
        // a lamp or a coil to ground shows the supply against a live wire: told apart in the matrices
        const all = [...probes, more].filter((probe) => !probe.reversed || !['lighting', 'start'].includes(role));
        const readings = all.map((probe) => trueReading(role, probe, vehicle));
        for (const some of [readings.slice(0, -1), readings])
          expect(isRole(conclusionOf(jobWith(vehicle, some)), role)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  const twelve = lines.filter((line) => line.job.vehicle?.systemVolts !== 24 && !line.text.startsWith('out 25.2'));
  test.each(twelve.map((line) => [`${line.file}:${line.number} ${line.text}`, line] as const))(
    'twice the volts on 24 V conclude the same: %s',
    (_, line) => {
      const once = saidOf(identifyWires(jobOfLine(line), []), true);
      const twice = saidOf(identifyWires(jobOfLine(line, 2), []), true);
      expect(twice.concluded).toEqual(once.concluded);
    },
  );

  test('the order of readings and wires changes neither a conclusion nor a trap', () => {
    fc.assert(
      fc.property(fc.constantFrom(...lines), fc.infiniteStream(fc.nat()), (line, numbers) => {
        const shuffle = <Item>(items: readonly Item[]): Item[] =>
          items
            .map((item) => ({ item, at: numbers.next().value ?? 0 }))
            .sort((one, other) => one.at - other.at)
            .map((each) => each.item);
        const job = jobOfLine(line);
        const shuffled: Job = {
          ...job,
          supply: shuffle(job.supply ?? []),
          probePoints: (job.probePoints ?? []).map((point) => ({ ...point, readings: shuffle(point.readings) })),
        };
        expect(saidOf(identifyWires(shuffled, []), true)).toEqual(saidOf(identifyWires(job, []), true));
      }),
      { numRuns: 150 },
    );
  });

  const shares = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 40, maxLength: 40 });
  test('noise within what the meter may be off opens a conclusion or leaves it, and never makes it another', () => {
    fc.assert(
      fc.property(fc.constantFrom(...lines), shares, (line, noise) => {
        const before = identifyWires(jobOfLine(line), []);
        const after = identifyWires(withNoise(jobOfLine(line), noise), []);
        before.wires.forEach((wire, place) => {
          const now = after.wires[place]?.conclusion;
          if (wire.conclusion.kind === 'concluded' && now?.kind === 'concluded')
            expect(now.role).toBe(wire.conclusion.role);
        });
      }),
      { numRuns: 200 },
    );
  });

  const anyReading = fc.record({
    key: fc.constantFrom('out' as const, 'accessory' as const, 'on' as const, 'crank' as const, 'running' as const),
    volts: fc.oneof(
      fc.constantFrom(0, 12.4, 12.6, 10.4, 14.1),
      // around every limit: nothing, a lossy feed, the supply, more than the supply
      fc.double({ min: 0.4, max: 0.6, noNaN: true }),
      fc.double({ min: 9.5, max: 12, noNaN: true }),
      fc.double({ min: 12, max: 15.5, noNaN: true }),
    ),
    lights: fc.constantFrom('on' as const, 'off' as const, 'off' as const),
  });
  test('nor does it on readings that nobody would expect', () => {
    fc.assert(
      fc.property(fc.array(anyReading, { minLength: 1, maxLength: 7 }), shares, (drawn, noise) => {
        const vehicle: Vehicle = { system: 12, drive: 'combustion', supplied: true };
        const readings: ReadingInput[] = drawn.map((each) => ({
          ...each,
          volts: Math.round(each.volts * 100) / 100,
          secondsWaited: 720,
        }));
        const before = conclusionOf(jobWith(vehicle, readings));
        const moved = readings.map((each, place) => ({ ...each, volts: noisy(each.volts, noise[place + 10] ?? 0) }));
        const after = conclusionOf(jobWith(vehicle, moved, noise));
        expect(before === 'open' || isRole(after, before)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

/** Every reading and every supply reading moved by a share of the meter's uncertainty. */
function withNoise(job: Job, noise: readonly number[]): Job {
  let place = 0;
  const moved = (volts: number) => noisy(volts, noise[place++ % noise.length] ?? 0);
  return {
    ...job,
    supply: (job.supply ?? []).map((each) => ({ ...each, volts: moved(each.volts) })),
    probePoints: (job.probePoints ?? []).map((point) => ({
      ...point,
      readings: point.readings.map((each) => ({ ...each, volts: moved(each.volts) })),
    })),
  };
}

describe('the advice on what to read next', () => {
  /** Follows the advice with the readings of a true wire; the number of readings until its role is proven. */
  function follow(role: (typeof trueRoles)[number], vehicle: Vehicle, start: readonly ReadingInput[]): number {
    const readings = [...start];
    for (let taken = 0; taken <= 4; taken += 1) {
      const conclusion = identifyWires(jobWith(vehicle, readings), []).wires[0]?.conclusion;
      if (conclusion?.kind === 'concluded') {
        expect(conclusion.role).toBe(role);
        return taken;
      }
      const wants = conclusion?.wants;
      if (wants === null || wants === undefined) throw new Error(`no advice after ${JSON.stringify(readings)}`);
      const probe = {
        key: wants.key,
        reversed: wants.reference === 'battery positive',
        lamps: wants.lights,
        waited: wants.secondsWaited,
      };
      readings.push(trueReading(role, probe, vehicle));
    }
    return Number.POSITIVE_INFINITY;
  }

  const cases = (['combustion', 'hybrid'] as const).flatMap((drive) =>
    ([12, 24] as const).flatMap((system) =>
      [true, false].flatMap((supplied) =>
        rolesOf({ system, drive, supplied }).map((role) => [role, { system, drive, supplied }] as const),
      ),
    ),
  );
  test.each(cases)('proves %s within four readings on %o', (role, vehicle) => {
    expect(follow(role, vehicle, [])).toBeLessThanOrEqual(4);
  });

  test('proves every role within four more readings whatever was read before', () => {
    fc.assert(
      fc.property(trueWires, ({ vehicle, role, probes }) => {
        const start = probes.filter((probe) => !probe.reversed).map((probe) => trueReading(role, probe, vehicle));
        expect(follow(role, vehicle, start)).toBeLessThanOrEqual(4);
      }),
      { numRuns: 100 },
    );
  });
});

describe('readings that contradict each other', () => {
  const proven = lines.flatMap((line) => {
    const job = jobOfLine(line);
    return identifyWires(job, []).wires.flatMap((wire, index) =>
      wire.conclusion.kind === 'concluded' && wire.conclusion.role !== 'signal' && wire.conclusion.role !== 'ground'
        ? [{ line, job, index }]
        : [],
    );
  });

  test('never leave a role proven, in whatever position and whatever order they were taken', () => {
    expect(proven.length).toBeGreaterThan(60);
    for (const { line, job, index } of proven) {
      const point = job.probePoints?.[index];
      for (const reading of (point?.readings ?? []).filter(
        (each) =>
          each.taken === 'before' &&
          !each.loaded &&
          !['out', 'off'].includes(each.key) &&
          each.reference === 'chassis' &&
          each.volts >= 0,
      )) {
        const supply = identifyWires(job, []).supply[reading.key]?.millivolts;
        if (supply === undefined || point === undefined) continue;
        const isLive = reading.volts * 1000 > supply / 2;
        const against = { ...reading, volts: isLive ? 0 : supply / 1000 };
        for (const readings of [
          [...point.readings, against],
          [against, ...point.readings],
          [...point.readings, reading, reading, against],
        ]) {
          const points = (job.probePoints ?? []).map((each) => (each === point ? { ...each, readings } : each));
          const found = identifyWires({ ...job, probePoints: points }, []).wires[index]?.conclusion.kind;
          expect(found, `${line.text}, and ${against.key} ${against.volts}`).toBe('open');
        }
      }
    }
  });
});

test('every reading that decided is one of those that the table shows, in its row or beside it', () => {
  for (const line of lines) {
    const job = jobOfLine(line);
    for (const [index, wire] of identifyWires(job, []).wires.entries()) {
      if (wire.conclusion.kind !== 'concluded') continue;
      const { counts, superseded, besides } = wire.table;
      const loaded = (job.probePoints?.[index]?.readings ?? []).filter((reading) => reading.loaded);
      const shown = new Set([...counts.values(), ...superseded, ...besides, ...loaded]);
      expect(wire.conclusion.because.filter((reading) => !shown.has(reading))).toEqual([]);
    }
  }
});
