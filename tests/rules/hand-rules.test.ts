import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { job } from '../../src/records/job.ts';
import type { Finding, Severity } from '../../src/rules/finding.ts';
import { rules } from '../../src/rules/index.ts';
import { openFindings } from '../../src/rules/open-findings.ts';

const handRules = rules.filter((rule) => ['workmanship', 'placement', 'close-up'].includes(rule.group));

const finding = (severity: Severity, at: string): Finding => ({
  rule: 'splice-is-tied',
  severity,
  at,
  says: 'not tied',
  figures: { lead: 'supply' },
  source: 's',
});
const jobWith = (answers: readonly { rule: string; at?: string; reason: string }[]) =>
  job.parse({ schema: 'keyout-job-1', id: '2026-11-24-KX4D', day: '2026-11-24', answers });

describe('the list of hand rules', () => {
  const folder = new URL('../../src/rules/', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => path.basename(file));

  test('names each rule once, as its file is named, in the order workmanship, placement, close-up', () => {
    const ids = handRules.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !files.includes(`${id}.ts`))).toEqual([]);
    const groups = handRules.map((rule) => ['workmanship', 'placement', 'close-up'].indexOf(rule.group));
    expect(groups).toEqual([...groups].sort((left, right) => left - right));
    expect(Math.min(...groups)).toBe(0);
  });

  test.each(handRules.map((rule) => [rule.id, rule] as const))(
    '%s has a passing and a failing example',
    (_id, rule) => {
      expect(rule.examples.some((example) => example.finds.length === 0)).toBe(true);
      expect(rule.examples.some((example) => example.finds.length > 0)).toBe(true);
      expect(rule.source.length).toBeGreaterThan(5);
    },
  );
});

describe('findings that stop the handover', () => {
  test('a block stays open whatever is answered', () => {
    const answered = jobWith([{ rule: 'splice-is-tied', reason: 'no room for a tie' }]);
    expect(openFindings(answered, [finding('block', 'supply')])).toHaveLength(1);
  });

  test('a reason is open until its rule is answered, everywhere or at its place', () => {
    const found = [finding('reason', 'supply'), finding('reason', 'ignition')];
    expect(openFindings(jobWith([]), found)).toEqual(found);
    expect(openFindings(jobWith([{ rule: 'splice-is-tied', reason: 'no room' }]), found)).toEqual([]);
    const atSupply = jobWith([{ rule: 'splice-is-tied', at: 'supply', reason: 'no room' }]);
    expect(openFindings(atSupply, found)).toEqual([finding('reason', 'ignition')]);
  });

  test('advice never stops it', () => {
    expect(openFindings(jobWith([]), [finding('advise', 'supply')])).toEqual([]);
  });
});
