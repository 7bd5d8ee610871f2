import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { runKeyout } from './run-keyout.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-line-'));

describe('the command line', () => {
  test('help lists every command on stdout and exits 0', () => {
    const help = runKeyout(['--help'], folder);
    expect(help.exitCode).toBe(0);
    for (const name of ['fit', 'check', 'handover', 'bill', 'day', 'recall', 'rules', 'verify', 'demo'])
      expect(help.out).toContain(`keyout ${name}`);
  });

  test('a mistyped command is met with the nearest one and exit code 2', () => {
    const wrong = runKeyout(['chek'], folder);
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toContain('keyout check');
  });

  test('an unknown option is named, with exit code 2', () => {
    const wrong = runKeyout(['check', '--colour'], folder);
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toContain('--colour');
  });

  test('a mistyped option is met with the nearest one', () => {
    const wrong = runKeyout(['bill', '--drfat'], folder);
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toContain('`--draft`');
  });

  test('completion names the shells where none is named', () => {
    const wrong = runKeyout(['completion'], folder);
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toContain('bash, zsh, fish');
    expect(runKeyout(['completion', 'bash'], folder).out).toContain('complete -o default -F _keyout keyout');
  });

  test('without a book the error says how to make one', () => {
    const none = runKeyout(['check'], folder);
    expect(none.exitCode).toBe(3);
    expect(none.err).toContain('keyout setup');
  });

  test('fit without a terminal refuses and names the file way', () => {
    const refused = runKeyout(['fit'], folder);
    expect(refused.exitCode).not.toBe(0);
    expect(refused.err).toMatch(/terminal/);
    expect(refused.err).not.toMatch(/\n\s+at /);
  });

  test('the JSON Schema of a job can be written by hand against', () => {
    const schema = JSON.parse(runKeyout(['schema', 'job'], folder).out) as {
      properties: Record<string, unknown>;
      additionalProperties: boolean;
    };
    expect(schema.additionalProperties).toBe(false);
    expect(Object.keys(schema.properties)).toEqual(
      expect.arrayContaining(['identity', 'vehicle', 'probePoints', 'connections', 'signature']),
    );
  });

  test('one rule prints why, source and examples', () => {
    const rule = runKeyout(['rules', 'ground-is-proven'], folder);
    expect(rule.out).toMatch(/source/);
    expect(rule.out).toMatch(/fails/);
  });
});
