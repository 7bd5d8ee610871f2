import { describe, expect, test } from 'vitest';
import { iccidFault } from '../../src/electrics/iccid.ts';
import { hasLuhnDigit } from '../../src/electrics/luhn.ts';
import { smallestConductor } from '../../src/electrics/smallest-conductor.ts';
import { vinCheckDigit } from '../../src/electrics/vin.ts';
import { vinOrigin } from '../../src/electrics/vin-region.ts';
import { workOutElectrics } from '../../src/electrics/work-out-electrics.ts';
import { deviceProfile } from '../../src/records/device-profile.ts';
import { type JobInput, job } from '../../src/records/job.ts';

const signs = 'ABCDEFGHJKLMNPRSTUVWXYZ1234567890';

describe('the country codes of ISO 3780 (from memory), at both ends of each range', () => {
  test.each([
    ['JA', 'J0', 'JP'],
    ['KL', 'KR', 'KR'],
    ['LA', 'L0', 'CN'],
    ['MA', 'ME', 'IN'],
    ['ML', 'MR', 'TH'],
    ['NL', 'NR', 'TR'],
    ['PL', 'PR', 'MY'],
    ['RF', 'RG', 'TW'],
    ['RL', 'RN', 'VN'],
    ['SA', 'SM', 'GB'],
    ['SU', 'SZ', 'PL'],
    ['TJ', 'TP', 'CZ'],
    ['TR', 'TV', 'HU'],
    ['TW', 'T1', 'PT'],
    ['UU', 'UX', 'RO'],
    ['U5', 'U7', 'SK'],
    ['VA', 'VE', 'AT'],
    ['VF', 'VR', 'FR'],
    ['VS', 'VW', 'ES'],
    ['WA', 'W0', 'DE'],
    ['XL', 'XR', 'NL'],
    ['YA', 'YE', 'BE'],
    ['YF', 'YK', 'FI'],
    ['YS', 'YW', 'SE'],
    ['ZA', 'ZR', 'IT'],
    ['8A', '8E', 'AR'],
    ['9A', '9E', 'BR'],
    ['93', '99', 'BR'],
  ])('%s to %s is %s, and its neighbours are not', (first, last, country) => {
    expect(vinOrigin(first)?.country).toBe(country);
    expect(vinOrigin(last)?.country).toBe(country);
    const after = signs[signs.indexOf(last[1] ?? '') + 1];
    const before = signs[signs.indexOf(first[1] ?? '') - 1];
    if (after !== undefined) expect(vinOrigin(`${last[0]}${after}`)?.country).not.toBe(country);
    if (before !== undefined) expect(vinOrigin(`${first[0]}${before}`)?.country).not.toBe(country);
  });
});

describe('numbers with signs too many', () => {
  // 1M8GDM9AXKP042788 is the encyclopaedia's example; 49015420323751-8 the often printed IMEI
  test.each([
    ['1M8GDM9AXKP042788', 'X'],
    ['1M8GDM9AXKP0427881', null],
    ['01M8GDM9AXKP042788', null],
    ['1M8GDM9AXKP04278', null],
  ])('the VIN %s has the check digit %s', (vin, digit) => {
    expect(vinCheckDigit(vin)).toBe(digit);
  });

  test.each([
    ['490154203237518', true],
    ['490154203237517', false],
    ['490154203237518a', false],
    ['a490154203237518', false],
    ['18', true],
    ['0', false],
    ['', false],
  ])('Luhn of "%s" is %s', (digits, right) => {
    expect(hasLuhnDigit(digits)).toBe(right);
  });

  test('a card number of 20 signs may carry its digit at the nineteenth place, and one of 19 may not miss it', () => {
    const nineteen = '8988211000000000004';
    const right = [...'0123456789'].map((digit) => `${nineteen.slice(0, -1)}${digit}`).find(hasLuhnDigit) ?? '';
    expect(iccidFault(right)).toBeNull();
    expect(iccidFault(`${right.slice(0, -1)}${(Number(right.at(-1)) + 1) % 10}`)).not.toBeNull();
  });
});

describe('what is not known is not made up', () => {
  const profile = deviceProfile.parse({
    id: 'invented',
    name: 'Invented',
    supplyVoltsMin: 8,
    supplyVoltsMax: 32,
    awakeMilliamps: 1000,
    asleepMilliamps: 0,
    leadGauge: { awg: 18 },
    leadLengthMillimetres: 2000,
    fuseAmperes: 3,
  });
  const work = (more: Partial<JobInput>, device: typeof profile | null = profile, assumed = '0') =>
    workOutElectrics(job.parse({ schema: 'keyout-job-1', id: '2026-11-24-KX4D', day: '2026-11-24', ...more }), device, {
      assumedAsleepMilliamps: assumed,
      standingDaysMin: 21,
    });
  const fused: Partial<JobInput> = {
    connections: [
      { lead: 'supply', point: 'P1', method: 'wrapped tap', fuse: { ratingAmperes: 3, distanceMillimetres: 90 } },
      { lead: 'ground', point: 'G1', method: 'ring terminal' },
    ],
  };

  test('without a device: no drop, no volts, no window, no standing time; a fuse is still judged by its wire', () => {
    const bare = work(
      {
        ...fused,
        harness: { lengthMillimetres: 1500 },
        vehicle: { batteryAmpereHours: 70 },
        probePoints: [{ name: 'P1', readings: [{ key: 'on', volts: 12.4 }] }],
      },
      null,
      '45',
    );
    expect(bare).toMatchObject({
      supplyDropMillivolts: null,
      returnDropMillivolts: null,
      leadDropMillivolts: null,
      atDevice: [],
      supplyMillivoltsMin: null,
      supplyMillivoltsMax: null,
      crankMillivoltsMin: null,
      supplyCodes: [],
      fuseAmperesMax: null,
      leadAmperesMax: null,
      asleepMilliamps: null,
      standingDays: null,
    });
    expect(bare.fuses.map((fuse) => fuse.lead)).toEqual(['supply']);
  });

  test('a vehicle in which nothing draws, or with a battery of unknown size, has no standing time', () => {
    expect(work({ vehicle: { batteryAmpereHours: 70 } }).standingDays).toBeNull();
    expect(work({}, profile, '45').standingDays).toBeNull();
    expect(work({ vehicle: { batteryAmpereHours: 70 } }, profile, '45').standingDays).toBeGreaterThan(0);
  });

  test('a job without connections has no fuse, and one without a ground no drop', () => {
    expect(work({}).fuses).toEqual([]);
    expect(work(fused)).toMatchObject({ groundDropMillivolts: null, groundTestMilliamps: null });
  });

  test('the drop of the ground is the largest read under load, at its own wire, against battery negative', () => {
    const loaded = { loaded: true, loadMilliamps: 85, taken: 'after' as const, key: 'running' as const };
    const found = work({
      ...fused,
      probePoints: [
        { name: 'P1', readings: [{ ...loaded, volts: 14, reference: 'battery negative' }] },
        {
          name: 'G1',
          readings: [
            { ...loaded, volts: 0.02, reference: 'battery negative' },
            { ...loaded, volts: 0.03, reference: 'battery negative', loadMilliamps: 90 },
            { ...loaded, volts: 0.9, reference: 'chassis' },
            { ...loaded, volts: 0.8, reference: 'battery negative', loaded: false },
          ],
        },
      ],
    });
    expect(found).toMatchObject({ groundDropMillivolts: 30, groundTestMilliamps: 90 });
  });

  test('gauges that are not known do not count', () => {
    expect(smallestConductor([undefined, { awg: 18 }, undefined, { awg: 20 }])).toEqual({ awg: 20 });
    expect(smallestConductor([undefined])).toBeNull();
  });
});
