import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { job as jobRecord } from '../../src/records/job.ts';
import { checkJob } from '../../src/rules/check-job.ts';
import { rules } from '../../src/rules/index.ts';
import { rootFindings } from '../../src/rules/root-findings.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';

type Sound = typeof soundJob;
const rootsOf = (change: (job: Sound) => Sound) => {
  const facts = soundFacts(change(soundJob));
  return rootFindings(facts.job, checkJob(facts)).map(({ finding, follows }) => [
    `${finding.rule} ${finding.at}`,
    ...follows.map((each) => `${each.rule} ${each.at}`),
  ]);
};
const read =
  (name: string, key: 'running' | 'crank', volts: number) =>
  (job: Sound): Sound => ({
    ...job,
    probePoints: (job.probePoints ?? []).map((point) =>
      point.name === name
        ? {
            ...point,
            readings: [...(point.readings ?? []).filter((each) => key !== 'crank' || each.key !== key), { key, volts }],
          }
        : point,
    ),
  });

describe('one fault is one finding', () => {
  test('an ignition wire that falls while cranking', () => {
    expect(rootsOf(read('P2', 'crank', 0))).toEqual([
      ['ignition-holds-through-crank P2', 'ignition-is-proven ignition', 'verdict-matches-readings P2'],
    ]);
  });

  test('two readings of a wire that cannot both be right', () => {
    const [first, ...others] = rootsOf(read('P1', 'running', 0));
    expect(first?.[0]).toBe('readings-can-all-be-right P1');
    expect(first?.slice(1)).toContain('constant-is-proven supply');
    expect(others.flat().filter((text) => /proven/.test(text))).toEqual([]);
  });

  test('a battery read wrong stands over every wire', () => {
    const roots = rootsOf((job) => ({ ...job, supply: [...(job.supply ?? []), { key: 'on', volts: 6.2 }] }));
    expect(roots[0]?.[0]).toBe('readings-can-all-be-right supply');
    expect(roots.flat().filter((text) => /-is-proven/.test(text)).length).toBeGreaterThan(1);
    expect(
      roots
        .slice(1)
        .flat()
        .filter((text) => /-is-proven/.test(text)),
    ).toEqual([]);
  });

  test('faults of two wires stay two', () => {
    const roots = rootsOf((job) => read('P2', 'crank', 0)(read('P1', 'running', 0)(job)));
    expect(roots.map(([root]) => root)).toEqual(
      expect.arrayContaining(['readings-can-all-be-right P1', 'ignition-holds-through-crank P2']),
    );
  });
});

test('no finding is lost or told twice, whatever a rule’s example breaks', () => {
  for (const rule of rules)
    for (const example of rule.examples) {
      const job = jobRecord.parse(example.change(structuredClone(soundJob)));
      const facts = soundFacts(job);
      const findings = checkJob(facts);
      const told = rootFindings(job, findings).flatMap(({ finding, follows }) => [finding, ...follows]);
      expect(new Set(told), `${rule.id}: ${example.name}`).toEqual(new Set(findings));
      expect(told).toHaveLength(findings.length);
    }
});

test('the sample truck, whose ignition wire drops in crank, has one fault', () => {
  const file = new URL('../../sample-jobs/jobs/2026/2026-11-24-7QTR.json', import.meta.url);
  const job = jobRecord.parse(JSON.parse(readFileSync(file, 'utf8')));
  const findings = checkJob(soundFacts(job)).filter((each) => each.severity === 'block');
  expect(
    rootFindings(job, findings).filter(({ finding }) => finding.rule === 'ignition-holds-through-crank'),
  ).toHaveLength(1);
  expect(rootFindings(job, findings).map(({ finding }) => finding.rule)).not.toContain('ignition-is-proven');
});
