import { describe, expect, test } from 'vitest';
import { vehicle } from '../../src/records/vehicle.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { isRegulated } from '../../src/rules/windscreen-limits.ts';

const { book } = soundFacts(soundJob);
const abroad = { ...book, business: { ...book.business, address: { ...book.business.address, country: 'CA' } } };

// 49 CFR 393.60(e) binds commercial motor vehicles; 49 CFR 390.5 (from memory): 10,001 lb, 4536 kg, and buses whatever they weigh
describe('49 CFR 393.60(e) binds', () => {
  test.each([
    [{ class: 'van', commercial: true }, true],
    [{ class: 'van', commercial: true, grossWeightKilograms: 4535 }, false],
    [{ class: 'van', commercial: true, grossWeightKilograms: 4536 }, true],
    [{ class: 'van', commercial: false, grossWeightKilograms: 9000 }, false],
    [{ class: 'car', commercial: true }, false],
    [{ class: 'car', commercial: true, grossWeightKilograms: 4600 }, true],
    [{ class: 'heavy truck', commercial: true }, true],
    [{ class: 'bus', commercial: true, grossWeightKilograms: 3000 }, true],
    [{ class: 'bus', commercial: false }, false],
    [{ class: 'trailer', commercial: true, grossWeightKilograms: 9000 }, false],
    [{ class: 'plant', commercial: true, grossWeightKilograms: 9000 }, false],
    [{ commercial: true }, true],
  ])('%j: %s', (fields, binds) => {
    expect(isRegulated(vehicle.parse(fields), book)).toBe(binds);
    expect(isRegulated(vehicle.parse(fields), abroad)).toBe(false);
  });
});
