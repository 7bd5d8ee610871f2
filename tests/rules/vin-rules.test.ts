import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { vinCheckDigit } from '../../src/electrics/vin.ts';
import { vinIsPlausible } from '../../src/rules/record/vin-is-plausible.ts';
import { vinYearAgrees } from '../../src/rules/record/vin-year-agrees.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';

const severities = (vehicle: object) => {
  const facts = soundFacts({ ...soundJob, vehicle: { ...soundJob.vehicle, ...vehicle } });
  return [vinIsPlausible, vinYearAgrees].map((rule) => rule.check(facts).map((hit) => hit.severity ?? rule.severity));
};
const sign = fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ0123456789');

describe('a VIN', () => {
  test.each([
    ['1G4AH59H45G118341', 2005, [[], []], 'the sample of 49 CFR 565.15'],
    ['1G4AH59H45G118341', 2006, [[], []], 'a year beside the model year'],
    ['1G4AH59H45G118341', 2007, [[], ['advise']], 'two years beside it'],
    ['1G4AH59H45G118331', 2005, [['reason'], []], 'a wrong digit, which leaves the year unsaid'],
    ['WBAEV53443KM18682', 2003, [['advise'], []], 'a European one without a check digit'],
    ['1G4AH59H45G11834I', 2005, [['advise'], []], 'the letter I'],
    ['XPL0320EJSN12345', 2005, [['advise'], []], 'a serial number of plant, 16 signs'],
  ])('%s of %i: %j (%s)', (vin, year, finds) => {
    expect(severities({ vin, year, class: 'car' })).toEqual(finds);
  });

  test('is never a reason to stop a vehicle from outside North America', () => {
    const abroad = fc
      .tuple(fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ6890'), fc.array(sign, { minLength: 16, maxLength: 16 }))
      .map(([first, rest]) => first + rest.join(''));
    fc.assert(
      fc.property(abroad, fc.integer({ min: 1960, max: 2060 }), (vin, year) => {
        expect(severities({ vin, year }).flat()).not.toContain('reason');
        expect(severities({ vin, year }).flat()).not.toContain('block');
      }),
      { numRuns: 300 },
    );
  });

  test('never blocks, whatever is written', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Z0-9-]{1,24}$/), (vin) => {
        expect(severities({ vin, year: 2020 }).flat()).not.toContain('block');
      }),
      { numRuns: 300 },
    );
  });

  test('of a heavy truck may mean either of two years, of a car only one', () => {
    // position 7 is a letter: 2010 to 2039 on light vehicles, either cycle on others; position 10 is B
    const start = '1J9RP1A3';
    const rest = 'BA164434';
    const vin = [...'0123456789X'].map((digit) => `${start}${digit}${rest}`);
    const right = vin.find((each) => vinCheckDigit(each) === each[8]) ?? '';
    expect(severities({ vin: right, year: 1981, class: 'heavy truck' })[1]).toEqual([]);
    expect(severities({ vin: right, year: 2011, class: 'heavy truck' })[1]).toEqual([]);
    expect(severities({ vin: right, year: 1981, class: 'car' })[1]).toEqual(['advise']);
    expect(severities({ vin: right, year: 1981, class: 'van', grossWeightKilograms: 4536 })[1]).toEqual(['advise']);
    expect(severities({ vin: right, year: 1981, class: 'van', grossWeightKilograms: 4537 })[1]).toEqual([]);
  });
});
