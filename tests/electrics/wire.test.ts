import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assessFuse } from '../../src/electrics/assess-fuse.ts';
import { dropMillivolts, lengthMillimetresMax } from '../../src/electrics/lead-drop.ts';
import { leadMilliohmsPerMetre } from '../../src/electrics/lead-resistance.ts';
import { isSmaller, smallestConductor, writeGauge } from '../../src/electrics/smallest-conductor.ts';
import { bundleAmperes } from '../../src/electrics/wire-ampacity.ts';
import { fuseAmperesMax } from '../../src/electrics/wire-fuse-limit.ts';
import { milliohmsPerMetre, squareMillimetres } from '../../src/electrics/wire-resistance.ts';

const ohmsPerThousandFeet = (milliohms: number) => milliohms * 0.3048;
const circularMils = (awg: number) => squareMillimetres({ awg }) / ((Math.PI * 0.0254 ** 2) / 4);

/** Solid copper at 20 °C: ASTM B258 diameters, NBS Handbook 100 resistivity as printed in common tables. */
const solid = [
  // AWG, circular mils, mm², ohm per 1000 ft
  [10, 10383, 5.261, 0.9989],
  [11, 8234, 4.172, 1.26],
  [12, 6530, 3.309, 1.588],
  [13, 5178, 2.624, 2.003],
  [14, 4107, 2.081, 2.525],
  [15, 3257, 1.65, 3.184],
  [16, 2583, 1.309, 4.015],
  [17, 2048, 1.038, 5.063],
  [18, 1624, 0.823, 6.385],
  [19, 1288, 0.653, 8.051],
  [20, 1022, 0.518, 10.15],
  [21, 810, 0.411, 12.8],
  [22, 642, 0.326, 16.14],
  [23, 510, 0.258, 20.36],
  [24, 404, 0.205, 25.67],
] as const;

describe('sizes and resistance of solid copper', () => {
  test.each(solid)('%i AWG: %d circular mils, %d mm², %d ohm per 1000 ft', (awg, mils, area, ohms) => {
    expect(circularMils(awg) / mils).toBeCloseTo(1, 2);
    expect(squareMillimetres({ awg }) / area).toBeCloseTo(1, 2);
    expect(ohmsPerThousandFeet(milliohmsPerMetre({ awg })) / ohms).toBeCloseTo(1, 3);
  });

  test('0 AWG is 0.3249 in across, and each step is the 39th root of 92 (ASTM B258)', () => {
    expect(2 * Math.sqrt(squareMillimetres({ awg: 0 }) / Math.PI)).toBeCloseTo(0.3249 * 25.4, 2);
    expect(Math.sqrt(squareMillimetres({ awg: 17 }) / squareMillimetres({ awg: 18 }))).toBeCloseTo(1.1229322, 6);
  });

  // NFPA 70 chapter 9 table 8, solid uncoated copper at 75 °C
  test.each([
    [18, 7.77],
    [16, 4.89],
    [14, 3.07],
    [12, 1.93],
    [10, 1.21],
  ])('%i AWG at 75 °C: %d ohm per 1000 ft within 0.5 %%', (awg, ohms) => {
    expect(Math.abs(ohmsPerThousandFeet(milliohmsPerMetre({ awg }, 75)) / ohms - 1)).toBeLessThan(0.005);
  });
});

describe('resistance of a stranded lead never lies below a published figure', () => {
  // NFPA 70 chapter 9 table 8, stranded uncoated copper at 75 °C
  test.each([
    [18, 7.95],
    [16, 4.99],
    [14, 3.14],
    [12, 1.98],
    [10, 1.24],
  ])('%i AWG stranded at 75 °C: at least %d ohm per 1000 ft', (awg, ohms) => {
    // the table is printed in three figures
    expect(ohmsPerThousandFeet(leadMilliohmsPerMetre({ awg }, 75))).toBeGreaterThan(ohms * 0.997);
  });

  // FAA AC 43.13-1B CHG 1 table 11-9, tin-plated, largest value at 20 °C
  test.each([
    [24, 28.4],
    [22, 16.2],
    [20, 9.88],
    [18, 6.23],
    [16, 4.81],
    [14, 3.06],
    [12, 2.02],
    [10, 1.26],
    [8, 0.7],
  ])('%i AWG: at least %d ohm per 1000 ft', (awg, ohms) => {
    const own = ohmsPerThousandFeet(leadMilliohmsPerMetre({ awg }));
    expect(own).toBeGreaterThanOrEqual(ohms - 1e-9);
    expect(own / ohms).toBeLessThan(1.06);
  });

  // IEC 60228 class 5, plain copper, largest value at 20 °C, milliohms per metre
  test.each([
    [0.5, 39],
    [0.75, 26],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
  ])('%d mm²: %d milliohms per metre', (area, milliohms) => {
    expect(leadMilliohmsPerMetre({ squareMillimetres: area })).toBeCloseTo(milliohms, 9);
    // classes 1 and 2 and ISO 6722-1 lie below class 5 and above pure copper
    expect(milliohmsPerMetre({ squareMillimetres: area })).toBeLessThan(milliohms);
  });

  test.each([0.35, 0.6, 2, 4, 6, 10])('%d mm², between the rows, is not below copper of its area', (area) => {
    const gauge = { squareMillimetres: area };
    expect(leadMilliohmsPerMetre(gauge)).toBeGreaterThan(milliohmsPerMetre(gauge));
    expect(leadMilliohmsPerMetre(gauge)).toBeLessThan(milliohmsPerMetre(gauge) * 1.15);
  });

  test('a thinner conductor never has less resistance, in either row', () => {
    const awg = [8, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24].map((each) =>
      leadMilliohmsPerMetre({ awg: each }),
    );
    const metric = [6, 4, 2.5, 2, 1.5, 1, 0.75, 0.6, 0.5, 0.35].map((each) =>
      leadMilliohmsPerMetre({ squareMillimetres: each }),
    );
    expect(awg).toEqual(awg.toSorted((one, other) => one - other));
    expect(metric).toEqual(metric.toSorted((one, other) => one - other));
  });
});

describe('volts lost along a wire', () => {
  const drop = (ohmsPerFoot: number, feet: number, amperes: number) =>
    dropMillivolts((ohmsPerFoot * 1000) / 0.3048, feet * 304.8, amperes * 1000) / 1000;

  // FAA AC 43.13-1B tables 11-7 and 11-8, 20 A; the circular prints 3.60 for 3.555 and, misprinted, .366 for 0.4914
  test.each([
    ['No. 6, 107 ft', 0.00044, 107, 0.942],
    ['No. 4, 90 ft', 0.00028, 90, 0.504],
    ['No. 12, 88 ft', 0.00202, 88, 3.555],
    ['No. 14, 100 ft', 0.00306, 100, 6.12],
    ['No. 10, 39 ft', 0.00126, 39, 0.983],
    ['No. 10, 19.5 ft', 0.00126, 19.5, 0.491],
    ['No. 10, 156 ft', 0.00126, 156, 3.931],
    ['No. 10, 273 ft', 0.00126, 273, 6.88],
  ])('%s: as worked in AC 43.13-1B', (_name, ohmsPerFoot, feet, volts) => {
    expect(drop(ohmsPerFoot, feet, 20)).toBeCloseTo(volts, 3);
  });

  test('AC 43.13-1B p. 11-26, example 1: 50 ft, 20 A, 1 V: No. 10 is too thin, No. 8 will do', () => {
    const of = (awg: number) => dropMillivolts(leadMilliohmsPerMetre({ awg }), 50 * 304.8, 20_000);
    expect(of(10)).toBeGreaterThan(1000);
    expect(of(8)).toBeLessThan(1000);
    expect(lengthMillimetresMax(leadMilliohmsPerMetre({ awg: 10 }), 1000, 20_000)).toBeLessThan(50 * 304.8);
    expect(lengthMillimetresMax(leadMilliohmsPerMetre({ awg: 8 }), 1000, 20_000)).toBeGreaterThan(50 * 304.8);
  });

  test('published worked drops over both ways: 16 AWG, 4.99 ohm, 100 ft, 4 A loses 3.99 V; 12 AWG, 1.98 ohm, 20 A 7.92 V', () => {
    expect(drop(0.00499, 200, 4)).toBeCloseTo(3.992, 6);
    expect(drop(0.00198, 200, 20)).toBeCloseTo(7.92, 6);
  });

  test('a hot wire may be shorter: L2 = 254.5 x L1 / (234.5 + T2), 0.8358 of it at 70 °C (AC 43.13-1B p. 11-22)', () => {
    const cold = lengthMillimetresMax(leadMilliohmsPerMetre({ awg: 18 }, 20), 500, 3000);
    const hot = lengthMillimetresMax(leadMilliohmsPerMetre({ awg: 18 }, 70), 500, 3000);
    expect(hot / cold).toBeCloseTo(254.5 / 304.5, 3);
    expect(hot / cold).toBeCloseTo(0.8358, 3);
  });

  test('without current any length will do', () => {
    expect(lengthMillimetresMax(20, 500, 0)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('fuses', () => {
  // FAA AC 43.13-1B table 11-3, fuse column
  test.each([
    [22, 5],
    [20, 5],
    [18, 10],
    [16, 10],
    [14, 15],
    [12, 20],
    [10, 30],
  ])('%i AWG: %i A at most', (awg, amperes) => {
    expect(fuseAmperesMax({ awg })).toBe(amperes);
    expect(assessFuse(amperes, [{ awg }], null, null).suitsTheWire).toBe(true);
    expect(assessFuse(amperes + 0.5, [{ awg }], null, null).suitsTheWire).toBe(false);
  });

  test.each([
    [0.35, 5],
    [0.5, 5],
    [0.75, 5],
    [0.85, 10],
    [1, 10],
    [1.5, 10],
    [2.5, 15],
    [4, 20],
    [6, 30],
  ])('%d mm² counts as the next thinner American size: %i A', (area, amperes) => {
    expect(fuseAmperesMax({ squareMillimetres: area })).toBe(amperes);
  });

  // FAA AC 43.13-1B CHG 1, table 11-9: 24 AWG carries 2.5 A in a bundle; 0.25 mm² (IEC 60228) is thicker than its 0.205 mm²
  test('a wire thinner than the table of fuses may have what it carries for long, a thinner one nothing', () => {
    expect(fuseAmperesMax({ awg: 24 })).toBe(2.5);
    expect(fuseAmperesMax({ squareMillimetres: 0.25 })).toBe(2.5);
    expect(assessFuse(1, [{ awg: 24 }], null, null)).toMatchObject({ wireAmperesMax: 2.5, suitsTheWire: true });
    expect(assessFuse(3, [{ awg: 24 }], null, null)).toMatchObject({ wireAmperesMax: 2.5, suitsTheWire: false });
    expect(assessFuse(1, [{ awg: 26 }], null, null)).toMatchObject({ wireAmperesMax: null, suitsTheWire: false });
  });

  test('the smallest conductor behind the fuse decides, wherever it stands in the row', () => {
    const judged = assessFuse(10, [{ awg: 14 }, { awg: 20 }, undefined], null, null);
    expect(judged).toMatchObject({ smallestConductor: { awg: 20 }, wireAmperesMax: 5, suitsTheWire: false });
    expect(assessFuse(10, [{ awg: 14 }], null, null).suitsTheWire).toBe(true);
    expect(assessFuse(10, [undefined], null, null)).toMatchObject({ smallestConductor: null, suitsTheWire: null });
  });

  // NFPA 70 210.20(A), from memory: 125 % of a continuous load
  test.each([
    [3, 2399, true],
    [3, 2400, true],
    [3, 2401, false],
    [7.5, 6000, true],
    [7.5, 6001, false],
  ])('%d A carries %i mA for long: %s', (rating, load, bears) => {
    expect(assessFuse(rating, [], load, null).bearsTheLoad).toBe(bears);
  });

  // 33 CFR 183.455(b)(1): 7 in
  test.each([
    [177, true],
    [178, true],
    [179, false],
  ])('%i mm from the joint is near: %s', (distance, near) => {
    expect(assessFuse(3, [], null, distance).isNearTheTap).toBe(near);
  });
});

describe('current in a bundle', () => {
  // FAA AC 43.13-1B CHG 1 table 11-9, 105 °C wire
  test.each([
    [24, 2.5],
    [22, 3],
    [20, 4],
    [18, 6],
    [16, 7],
    [14, 10],
    [12, 13],
    [10, 17],
    [8, 38],
  ])('%i AWG carries %d A', (awg, amperes) => {
    expect(bundleAmperes({ awg })).toBe(amperes);
  });

  test.each([
    [0.2, null],
    [0.35, 3],
    [0.5, 3],
    [0.75, 4],
    [1, 6],
    [1.5, 7],
    [2.5, 10],
    [4, 13],
    [6, 17],
  ])('%d mm² counts as the next thinner American size: %s A', (area, amperes) => {
    expect(bundleAmperes({ squareMillimetres: area })).toBe(amperes);
  });
});

describe('drop', () => {
  const gauge = fc.oneof(
    fc.integer({ min: 8, max: 24 }).map((awg) => ({ awg })),
    fc.constantFrom(0.35, 0.5, 0.75, 1, 1.5, 2.5, 4).map((squareMillimetres) => ({ squareMillimetres })),
  );

  test('grows in step with length and current, and with heat', () => {
    fc.assert(
      fc.property(
        gauge,
        fc.integer({ min: 1, max: 50_000 }),
        fc.integer({ min: 1, max: 20_000 }),
        (of, length, current) => {
          const once = dropMillivolts(leadMilliohmsPerMetre(of), length, current);
          expect(dropMillivolts(leadMilliohmsPerMetre(of), length * 2, current)).toBeCloseTo(once * 2, 6);
          expect(dropMillivolts(leadMilliohmsPerMetre(of), length, current * 2)).toBeCloseTo(once * 2, 6);
          expect(dropMillivolts(leadMilliohmsPerMetre(of, 60), length, current)).toBeCloseTo((once * 294.5) / 254.5, 6);
        },
      ),
    );
  });

  test('over the longest length allowed stays within the limit, a millimetre more does not', () => {
    fc.assert(
      fc.property(
        gauge,
        fc.integer({ min: 50, max: 1000 }),
        fc.integer({ min: 10, max: 20_000 }),
        (of, limit, current) => {
          const perMetre = leadMilliohmsPerMetre(of, 60);
          const longest = lengthMillimetresMax(perMetre, limit, current);
          expect(dropMillivolts(perMetre, longest, current)).toBeLessThanOrEqual(limit + 1e-6);
          expect(dropMillivolts(perMetre, longest + 1, current)).toBeGreaterThan(limit - 1e-6);
        },
      ),
    );
  });
});

describe('comparing conductors', () => {
  test('the two rows of sizes are compared by area, with a tenth between neighbours', () => {
    expect(isSmaller({ squareMillimetres: 0.75 }, { awg: 18 })).toBe(false);
    expect(isSmaller({ squareMillimetres: 0.5 }, { awg: 18 })).toBe(true);
    expect(isSmaller({ awg: 20 }, { awg: 18 })).toBe(true);
    expect(isSmaller({ awg: 18 }, { awg: 18 })).toBe(false);
    expect(isSmaller({ awg: 16 }, { awg: 18 })).toBe(false);
    expect(isSmaller({ squareMillimetres: 0.74 }, { squareMillimetres: 0.75 })).toBe(true);
  });

  test('the thinnest is found and written as the trade writes it', () => {
    expect(smallestConductor([{ awg: 18 }, { squareMillimetres: 0.5 }, undefined])).toEqual({ squareMillimetres: 0.5 });
    expect(smallestConductor([])).toBeNull();
    expect(writeGauge({ awg: 18 })).toBe('18 AWG');
    expect(writeGauge({ squareMillimetres: 0.5 })).toBe('0.5 mm²');
  });
});
