import { describe, expect, test } from 'vitest';
import { job as jobRecord } from '../../src/records/job.ts';
import { deviceNotInAnotherVehicle } from '../../src/rules/record/device-not-in-another-vehicle.ts';
import { imeiIsPlausible } from '../../src/rules/record/imei-is-plausible.ts';
import { odometerNotBelowEarlier } from '../../src/rules/record/odometer-not-below-earlier.ts';
import { timesArePossible } from '../../src/rules/record/times-are-possible.ts';
import { isSameVehicle } from '../../src/rules/same-vehicle.ts';
import { soundEarlier, soundFacts, soundJob } from '../../src/rules/sound-job.ts';

describe('odometer', () => {
  const reads = (value: number, unit: 'mi' | 'km' | 'h', earlier: number, earlierUnit: 'mi' | 'km' | 'h') => {
    const before = {
      ...soundEarlier,
      vehicle: { ...soundEarlier.vehicle, odometer: { value: earlier, unit: earlierUnit } },
    };
    const now = { ...soundJob, vehicle: { ...soundJob.vehicle, odometer: { value, unit } } };
    return odometerNotBelowEarlier.check(soundFacts(now, { earlier: [before] })).length;
  };

  test.each([
    [100, 'mi', 100, 'mi', 0],
    [99, 'mi', 100, 'mi', 1],
    [101, 'mi', 100, 'mi', 0],
    // 1000 mi are 1609.344 km (international mile)
    [1609, 'km', 1000, 'mi', 0],
    [1608, 'km', 1000, 'mi', 1],
    [1000, 'mi', 1610, 'km', 0],
    [999, 'mi', 1610, 'km', 1],
    [5, 'h', 1000, 'mi', 0],
    [1000, 'mi', 5000, 'h', 0],
    [4, 'h', 5, 'h', 1],
  ] as const)('%i %s after %i %s: %i findings', (value, unit, earlier, earlierUnit, count) => {
    expect(reads(value, unit, earlier, earlierUnit)).toBe(count);
  });
});

describe('times', () => {
  const found = (start: string, end: string, more: object = {}, signedAt?: string) =>
    timesArePossible.check(
      soundFacts({
        ...soundJob,
        labour: { start, end, ...more },
        signature: { answer: 'accepts', name: 'A. Quill', ...(signedAt === undefined ? {} : { signedAt }) },
      }),
    ).length;

  test.each([
    ['2026-11-24T08:00', '2026-11-24T08:01', {}, undefined, 0],
    ['2026-11-24T08:00', '2026-11-24T08:00', {}, undefined, 1],
    ['2026-11-24T08:00', '2026-11-24T07:59', {}, undefined, 1],
    ['2026-11-24T08:00', '2026-11-25T00:00', {}, undefined, 0],
    ['2026-11-24T08:00', '2026-11-25T00:01', {}, undefined, 1],
    ['2026-11-24T08:00', '2026-11-24T09:00', { waitingMinutes: 40, breakMinutes: 20 }, undefined, 0],
    ['2026-11-24T08:00', '2026-11-24T09:00', { waitingMinutes: 40, breakMinutes: 21 }, undefined, 1],
    ['2026-11-23T23:59', '2026-11-24T01:00', {}, undefined, 1],
    ['2026-11-24T08:00', '2026-11-24T09:00', {}, '2026-11-24T08:00', 0],
    ['2026-11-24T08:00', '2026-11-24T09:00', {}, '2026-11-24T07:59', 1],
  ])('%s to %s %j signed %s: %i findings', (start, end, more, signedAt, count) => {
    expect(found(start, end, more, signedAt)).toBe(count);
  });
});

describe('one device in two vehicles', () => {
  const vehicleOf = (fields: object) =>
    jobRecord.parse({ schema: 'keyout-job-1', id: '2026-01-10-AAAA', day: '2026-01-10', vehicle: fields }).vehicle;

  test.each([
    [{ vin: 'A1' }, { vin: 'A1', plate: 'X' }, true],
    [{ vin: 'A1', plate: 'X' }, { vin: 'A2', plate: 'X' }, false],
    [{ plate: 'VLT 4417' }, { vin: 'A1', plate: 'vlt-4417' }, true],
    [{ unitNumber: 'LDR-5' }, { unitNumber: 'LDR 5' }, true],
    [{ unitNumber: 'LDR-5' }, { unitNumber: 'LDR-6' }, false],
    [{ vin: 'A1' }, { plate: 'X' }, false],
    [{}, {}, false],
  ])('%j and %j are one vehicle: %s', (one, other, same) => {
    expect(isSameVehicle(vehicleOf(one), vehicleOf(other))).toBe(same);
    expect(isSameVehicle(vehicleOf(other), vehicleOf(one))).toBe(same);
  });

  test('a second visit to plant known by its unit number alone finds nothing', () => {
    const { vin: _vin, plate: _plate, ...vehicle } = soundEarlier.vehicle;
    const { vin: _own, plate: _ownPlate, ...now } = soundJob.vehicle ?? {};
    const facts = soundFacts({ ...soundJob, vehicle: now }, { sameDevice: [{ ...soundEarlier, vehicle }] });
    expect(deviceNotInAnotherVehicle.check(facts)).toEqual([]);
  });

  test('a device taken out of the other vehicle before it was fitted there again is still there', () => {
    const other = { ...soundJob.vehicle, vin: '1G4AH59H45G118341' };
    const removal = {
      ...soundEarlier,
      id: '2026-01-09-BBBB',
      day: '2026-01-09',
      device: { profile: 'example-device', removedSerial: 'OV3-004417' },
    };
    const facts = soundFacts({ ...soundJob, vehicle: other }, { sameDevice: [removal, soundEarlier] });
    expect(deviceNotInAnotherVehicle.check(facts)).toHaveLength(1);
  });
});

test.each([
  ['490154203237518', 0],
  ['49-015420-323751-8', 0],
  ['49015420323751', 1],
  ['4901542032375180', 1],
  ['490154203237517', 1],
])('IMEI %s: %i findings (3GPP TS 23.003 annex B; example from memory)', (imei, count) => {
  const device = { profile: 'example-device', imei };
  expect(imeiIsPlausible.check(soundFacts({ ...soundJob, device }))).toHaveLength(count);
});
