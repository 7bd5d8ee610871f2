import { describe, expect, test } from 'vitest';
import type { JobInput } from '../../src/records/job.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { spokenRules as rules } from './spoken-rules.ts';

const failing = rules.flatMap((rule) =>
  rule.examples
    .filter((example) => example.finds.length > 0)
    .map((example) => [rule.id, example.name, rule, example] as const),
);

describe('every message', () => {
  test.each(failing)('%s, %s: says what is wrong and what to do in whole sentences', (_id, _name, rule, example) => {
    const hits = rule.check(soundFacts(example.change(soundJob), example.facts));
    expect(hits.length).toBeGreaterThan(0);
    for (const text of hits.flatMap((hit) => [hit.what, hit.whatToDo])) {
      expect(text).toMatch(/^[\p{Lu}"\d].*[.!]$/u);
      expect(text).not.toMatch(/undefined|null|NaN|Infinity|\[object|\s{2}|\.\./);
    }
    for (const hit of hits) expect(hit.what).not.toBe(hit.whatToDo);
  });

  test.each(rules.map((rule) => [rule.id, rule] as const))('%s: id, sentence, reason and source', (_id, rule) => {
    expect(rule.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(rule.summary).toMatch(/^[\p{Lu}"\d].*\.$/u);
    expect(rule.why).toMatch(/^[\p{Lu}].*\.$/u);
    // a published title with a section or a number, the maker's or payer's own data, or the plain admission
    expect(rule.source).toMatch(
      /common practice, no source|from memory|CFR|AC 43\.13|Army TM|DIN|ISO|IEC|ITU|3GPP|USC|CCR|own (profile|terms)|maker's data/,
    );
    expect(rule.source).not.toMatch(/\.$/);
  });

  test('no two rules share a reason or a summary', () => {
    expect(new Set(rules.map((rule) => rule.summary)).size).toBe(rules.length);
    const reasons = rules.map((rule) => rule.why);
    expect(reasons.filter((why, place) => reasons.indexOf(why) !== place)).toEqual([]);
  });
});

/** The sound job on another kind of vehicle. */
const without = (key: string, job: JobInput): JobInput => ({
  ...job,
  supply: (job.supply ?? []).filter((each) => each.key !== key),
  probePoints: (job.probePoints ?? []).map((point) => ({
    ...point,
    readings: (point.readings ?? []).filter((each) => each.key !== key),
  })),
});
const scaled = (job: JobInput): JobInput => ({
  ...job,
  vehicle: { ...job.vehicle, systemVolts: 24, class: 'heavy truck' },
  supply: (job.supply ?? []).map((each) => ({ ...each, volts: each.volts * 2 })),
  probePoints: (job.probePoints ?? []).map((point) => ({
    ...point,
    readings: (point.readings ?? []).map((each) =>
      each.reference === 'battery negative' ? each : { ...each, volts: each.volts * 2 },
    ),
  })),
  before: { ...job.before, restVolts: 25.16, chargingVolts: 28.2 },
  after: { ...job.after, restVolts: 25.1, chargingVolts: 28.2 },
});
const found = (job: JobInput) => {
  const facts = soundFacts(job);
  return rules.flatMap((rule) => rule.check(facts).map((hit) => `${rule.id}: ${hit.what}`));
};

describe('the sound job on other vehicles', () => {
  test.each(['hybrid', 'electric'] as const)('a %s vehicle that never cranks', (drive) => {
    const job = without('crank', { ...soundJob, vehicle: { ...soundJob.vehicle, drive, start: 'button' } });
    expect(found(job)).toEqual([]);
  });

  test('a 24 V truck with twice the volts', () => {
    expect(found(scaled(soundJob))).toEqual([]);
  });

  test('a 24 V truck called 12 V is blocked, and so is a 12 V van called 24 V', () => {
    const truck = scaled(soundJob);
    expect(found({ ...truck, vehicle: { ...truck.vehicle, systemVolts: 12 } }).join('\n')).toMatch(
      /system-volts-agree/,
    );
    const van = { ...soundJob, vehicle: { ...soundJob.vehicle, systemVolts: 24 as const } };
    expect(found(van).join('\n')).toMatch(/system-volts-agree/);
  });

  test('plant without VIN or plate, with an hour meter and an isolator', () => {
    const { vin: _vin, plate: _plate, ...vehicle } = soundJob.vehicle ?? {};
    const job: JobInput = {
      ...soundJob,
      vehicle: {
        ...vehicle,
        class: 'plant',
        commercial: false,
        batteryIsolator: true,
        odometer: { value: 7340, unit: 'h' },
      },
      probePoints: (soundJob.probePoints ?? []).map((point) => ({
        ...point,
        isolatorSide: 'battery' as const,
        readings: (point.readings ?? []).map((each) => ({ ...each, isolator: 'closed' as const })),
      })),
      placement: { ...soundJob.placement, zone: 'machine cab' } as NonNullable<JobInput['placement']>,
    };
    expect(found(job)).toEqual([]);
  });
});
