import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { checkOutput, rulesOutput } from '../../src/commands/check-output.ts';
import { rules } from '../../src/rules/index.ts';
import { callKeyout } from '../end-to-end/call-keyout.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-check-'));
const book = path.join(folder, 'book');
const day = ['--day', '2026-11-24', '--book', book];

beforeAll(() => cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), book, { recursive: true }));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const order = ['BLOCK', 'REASON', 'ADVISE'];
const file = (code: string) => path.join(book, `jobs/2026/2026-11-24-${code}.json`);
/** Runs `check --json` after a change to one job's file, which is put back afterwards. */
async function checkWith(code: string, change: (job: Record<string, unknown>) => void) {
  const before = readFileSync(file(code), 'utf8');
  const job = JSON.parse(before) as Record<string, unknown>;
  change(job);
  writeFileSync(file(code), JSON.stringify(job));
  try {
    const json = await callKeyout(['check', `2026-11-24-${code}`, '--json', '--book', book]);
    const text = await callKeyout(['check', `2026-11-24-${code}`, '--book', book]);
    return { json: JSON.parse(json.out) as unknown, text: text.out, exitCode: json.exitCode };
  } finally {
    writeFileSync(file(code), before);
  }
}

describe('keyout check --json', () => {
  test('prints, for the whole sample day, what its schema describes and nothing else', async () => {
    const { out, exitCode } = await callKeyout(['check', '--json', ...day]);
    const jobs = checkOutput.parse(JSON.parse(out));
    expect(jobs.map((each) => each.job)).toHaveLength(5);
    expect(jobs.filter((each) => !each.mayBeHandedOver).map((each) => each.job)).toEqual(['2026-11-24-7QTR']);
    expect(exitCode).toBe(1);
  });

  test('prints what the JSON Schema of `keyout schema check` describes', async () => {
    const printed = await callKeyout(['schema', 'check']);
    const described = z.fromJSONSchema(JSON.parse(printed.out) as Parameters<typeof z.fromJSONSchema>[0]);
    const { out } = await callKeyout(['check', '--json', ...day]);
    const document = JSON.parse(out) as { findings: object[] }[];
    expect(described.safeParse(document).success).toBe(true);
    // the description is strict: an undescribed field and a missing one are both refused
    expect(described.safeParse(document.map((each) => ({ ...each, extra: 1 }))).success).toBe(false);
    expect(described.safeParse(document.map(({ findings: _findings, ...rest }) => rest)).success).toBe(false);
  });

  test('describes also wires left open, traps, bad fuses, reversed readings and answers', async () => {
    const { json, exitCode } = await checkWith('KX4D', (job) => {
      const points = job.probePoints as { readings: object[]; verdict?: string }[];
      if (points[0] !== undefined) points[0].readings = [{ key: 'out', volts: 12.57, secondsWaited: 60 }];
      if (points[2] !== undefined) delete points[2].verdict;
      const made = job.connections as { fuse?: object; gauge?: object }[];
      if (made[0] !== undefined) Object.assign(made[0], { fuse: { ratingAmperes: 15, distanceMillimetres: 400 } });
      if (made[1] !== undefined) Object.assign(made[1], { gauge: { squareMillimetres: 0.35 } });
      job.answers = [{ rule: 'fuse-is-near-the-tap', reason: 'no room nearer, lead in a sleeve' }];
    });
    expect(exitCode).toBe(1);
    const [van] = checkOutput.parse(json);
    expect(van?.evidence.wires[0]).toMatchObject({ point: 'P1', lead: 'supply', agreement: 'not proven' });
    expect(van?.evidence.wires[0]?.conclusion.kind).toBe('open');
    expect(van?.evidence.wires[0]?.next).toMatch(/Read P1/);
    expect(van?.evidence.wires[0]?.traps.map((trap) => trap.kind)).toContain('retained power');
    expect(van?.evidence.wires[2]?.next).toMatch(/Record the verdict: accessory/);
    expect(van?.electrics.fuses[0]).toMatchObject({ lead: 'supply', suitsTheWire: false, isNearTheTap: false });
    const near = van?.findings.find((finding) => finding.rule === 'fuse-is-near-the-tap');
    expect(near).toMatchObject({ open: false, answer: 'no room nearer, lead in a sleeve' });
    expect(van?.open).toContain('fuse-suits-the-wire');
    expect(van?.open).not.toContain('fuse-is-near-the-tap');
  });

  test('describes a job with nothing in it', async () => {
    const { json } = await checkWith('KX4D', (job) => {
      for (const key of Object.keys(job)) if (!['schema', 'id', 'day'].includes(key)) delete job[key];
    });
    const [empty] = checkOutput.parse(json);
    expect(empty?.open.every((rule) => rule === 'record-is-complete' || rule === 'signature-or-reason')).toBe(true);
    expect(empty?.electrics).toMatchObject({ atDevice: [], leadDropMillivolts: null, standingDays: null });
  });
});

describe('keyout check for people', () => {
  test('says of each wire what it is, its readings and what to do next, of each finding what, why and what to do', async () => {
    const { text } = await checkWith('7QTR', () => {});
    expect(text).toMatch(/P1 {3}.*constant \(terminal 30\).*25\.08 V/);
    expect(text).toMatch(/next: The readings rule out "ignition"\..*join the ignition lead to another wire/);
    expect(text).toMatch(/BLOCK \(P2\): P2 falls to 0\.00 V while cranking/);
    expect(text).toMatch(/why: {3}.*\n {4}to do: .*\n {4}rule: {2}ignition-holds-through-crank \[DIN 72552/);
    expect(text).toMatch(/volts and amperes: least at the device 20\.\d\d V, crank \(made for 8\.00 V to 32\.00 V\)/);
    expect(text).toMatch(/Not ready: \d+ to correct/);
  });

  test('prints the reason given in place of what to do, and says that nothing stops the handover', async () => {
    const { text } = await checkWith('M2WB', () => {});
    expect(text).toMatch(/REASON \(device\).*\n.*why.*\n {4}reason given: Beam covers/);
    expect(text).toMatch(/Nothing stops the handover \(1 finding answered or for advice\)/);
  });

  test('puts what stops the handover first, and gives every reading of a wire left open', async () => {
    const { text } = await checkWith('KX4D', (job) => {
      const points = job.probePoints as { readings: object[] }[];
      if (points[0] !== undefined)
        points[0].readings = [
          { key: 'out', volts: 12.57, secondsWaited: 30 },
          { key: 'on', volts: 12.4, steady: false },
          { key: 'running', volts: -14.1, reference: 'battery positive' },
        ];
      job.after = { restVolts: 12.1, chargingVolts: 14.1 };
    });
    expect(text).toContain(
      'read: 12.57 V (out, 30 s), 12.40 V (on, wandering), -14.10 V (running, against battery positive)',
    );
    const severities = [...text.matchAll(/^ {2}(BLOCK|REASON|ADVISE)/gm)].map((match) => match[1] ?? '');
    expect(new Set(severities)).toEqual(new Set(['BLOCK', 'REASON', 'ADVISE']));
    expect(severities).toEqual(severities.toSorted((one, other) => order.indexOf(one) - order.indexOf(other)));
  });

  test('tells the readings that a conclusion does not rest on', async () => {
    const { text } = await checkWith('KX4D', () => {});
    expect(text).toMatch(/also read: 0\.00 V \(crank\)/);
  });
});

describe('keyout rules', () => {
  test('prints as JSON what its schema describes, every rule in order', async () => {
    const { out } = await callKeyout(['rules', '--json']);
    const printed = rulesOutput.parse(JSON.parse(out));
    expect(printed.map((rule) => rule.id)).toEqual(rules.map((rule) => rule.id));
    const one = await callKeyout(['rules', 'splice-is-covered', '--json']);
    expect(rulesOutput.parse([JSON.parse(one.out)])[0]?.examples.length).toBeGreaterThanOrEqual(2);
    expect(JSON.parse((await callKeyout(['schema', 'rules'])).out)).toMatchObject({ type: 'array' });
  });

  test('prints why, source and examples of one rule', async () => {
    const { out } = await callKeyout(['rules', 'ignition-holds-through-crank']);
    expect(out).toMatch(/^why +A wire that drops while cranking/m);
    expect(out).toMatch(/^source +DIN 72552/m);
    expect(out).toMatch(/^ {2}holds {2}/m);
    expect(out).toContain('  fails  nothing while cranking\n         block (P2): P2 falls to 0.00 V while cranking;');
  });

  test('lists every rule under its group with severity, what should hold and source', async () => {
    const { out } = await callKeyout(['rules']);
    for (const rule of rules) expect(out).toContain(`${rule.severity.padEnd(6)}  ${rule.id}\n`);
    expect(out.match(/^(wiring|workmanship|placement|close-up|record)$/gm)).toHaveLength(5);
  });

  test('an id that does not exist is met with those that share a word, and exit code 2', async () => {
    const { err, exitCode } = await callKeyout(['rules', 'fuse-size']);
    expect(exitCode).toBe(2);
    expect(err).toContain('fuse-suits-the-wire');
    expect((await callKeyout(['schema', 'constructor'])).exitCode).toBe(2);
  });
});
