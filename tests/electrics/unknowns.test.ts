import { describe, expect, test } from 'vitest';
import { assessFuse } from '../../src/electrics/assess-fuse.ts';
import { isSmaller, smallestConductor } from '../../src/electrics/smallest-conductor.ts';
import { vinOrigin } from '../../src/electrics/vin-region.ts';
import { workOutElectrics } from '../../src/electrics/work-out-electrics.ts';
import { job } from '../../src/records/job.ts';

describe('what the record does not tell is left open, never taken for nought', () => {
  test('a fuse of which only the rating is known is judged in nothing', () => {
    expect(assessFuse(3, [undefined], null, null)).toEqual({
      ratingAmperes: 3,
      smallestConductor: null,
      wireAmperesMax: null,
      suitsTheWire: null,
      loadAmperesMin: null,
      bearsTheLoad: null,
      distanceMillimetres: null,
      isNearTheTap: null,
    });
  });

  test('a load of exactly four fifths of the rating is borne, a milliampere more is not', () => {
    // NFPA 70 (NEC) 210.20(A): 125 % of a continuous load (from memory)
    expect(assessFuse(3, [{ awg: 18 }], 2400, 90)).toMatchObject({ bearsTheLoad: true, loadAmperesMin: 3 });
    expect(assessFuse(3, [{ awg: 18 }], 2401, 90).bearsTheLoad).toBe(false);
    expect(assessFuse(0.1, [{ awg: 18 }], 80, 90).bearsTheLoad).toBe(true);
  });

  test('an unknown conductor between known ones is passed over', () => {
    expect(smallestConductor([{ awg: 18 }, undefined, { awg: 22 }])).toEqual({ awg: 22 });
    expect(isSmaller({ squareMillimetres: 0.75 }, { awg: 18 })).toBe(false);
    expect(isSmaller({ awg: 18 }, { squareMillimetres: 0.9 })).toBe(false);
    expect(isSmaller({ squareMillimetres: 0.75 }, { squareMillimetres: 0.8 })).toBe(true);
    expect(isSmaller({ awg: 18 }, { awg: 18 })).toBe(false);
  });

  test('a job that says nothing has no figure but the limits', () => {
    const bare = job.parse({ schema: 'keyout-job-1', id: '2026-11-24-KX4D', day: '2026-11-24' });
    const worked = workOutElectrics(bare, null, { assumedAsleepMilliamps: '20', standingDaysMin: 21 });
    expect(worked).toMatchObject({
      supplyDropMillivolts: null,
      returnDropMillivolts: null,
      leadDropMillivolts: null,
      atDevice: [],
      fuses: [],
      standingDays: null,
    });
  });
});

describe('codes that ISO 3780 hands to nobody in our table (from memory) have a region and no country', () => {
  test.each([
    ['AJ', 'Africa'],
    ['BA', 'Africa'],
    ['GZ', 'Africa'],
    ['KA', 'Asia'],
    ['KS', 'Asia'],
    ['MF', 'Asia'],
    ['RA', 'Asia'],
    ['SN', 'Europe'],
    ['T2', 'Europe'],
    ['3X', 'North America'],
    ['6X', 'Oceania'],
    ['8H', 'South America'],
    ['9H', 'South America'],
    ['92', 'South America'],
    ['90', 'South America'],
    ['0A', 'South America'],
  ])('%s', (code, region) => {
    expect(vinOrigin(code)).toEqual({ region, country: null });
  });

  test.each(['', 'A', 'IA', 'OA', 'QA', 'AI', 'AO', 'AQ', 'A-'])('"%s" cannot begin a VIN', (code) => {
    expect(vinOrigin(code)).toBeNull();
  });
});
