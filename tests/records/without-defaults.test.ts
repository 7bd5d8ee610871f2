import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { job } from '../../src/records/job.ts';
import { withoutDefaults } from '../../src/records/without-defaults.ts';
import { signedRecordDigest } from '../../src/storage/digest.ts';

const samples = path.resolve(import.meta.dirname, '../../sample-jobs/jobs/2026');
const written = readdirSync(samples).map(
  (name) => [name, JSON.parse(readFileSync(path.join(samples, name), 'utf8'))] as const,
);

describe('a record without what its schema fills in', () => {
  test.each(written)('is read again as the same record: %s', (_, sample) => {
    const record = job.parse(sample);
    const short = withoutDefaults(job, record);
    expect(job.parse(short)).toEqual(record);
    expect(withoutDefaults(job, job.parse(short))).toEqual(short);
    expect(JSON.stringify(short).length).toBeLessThan(JSON.stringify(record).length);
  });

  test('keeps a value that differs, an empty section that was written, and fields it does not know', () => {
    const section = z.strictObject({ lamps: z.array(z.string()).default([]), steady: z.boolean().default(true) });
    const shape = z.object({ before: section.optional(), after: section.prefault({}), tug: z.boolean().optional() });
    const short = (value: unknown) => withoutDefaults(shape, value);
    expect(short({ before: { lamps: [], steady: true }, after: { lamps: [], steady: true } })).toEqual({ before: {} });
    expect(short({ after: { lamps: [], steady: false }, tug: false })).toEqual({
      after: { steady: false },
      tug: false,
    });
    expect(short({ other: 1, before: undefined })).toEqual({ other: 1 });
  });
});

describe('what a signature stands for', () => {
  test.each(written)('is the same once a later version knows more fields: %s', (_, sample) => {
    const now = job.parse(sample);
    const point = { ...(now.probePoints?.[0] ?? {}), twisted: false, sleeve: 'none' };
    const later = {
      ...now,
      ...(now.probePoints === undefined ? {} : { probePoints: [point, ...now.probePoints.slice(1)] }),
    };
    expect(signedRecordDigest(later as typeof now)).toBe(signedRecordDigest(now));
    expect(signedRecordDigest(withoutDefaults(job, now) as typeof now)).toBe(signedRecordDigest(now));
  });

  test('is another for every change of what was measured or done', () => {
    const [, sample] = written.find(([name]) => name.includes('KX4D')) ?? ['', {}];
    const now = job.parse(sample);
    const places: string[] = [];
    const visit = (value: unknown, way: readonly (string | number)[]) => {
      if (value !== null && typeof value === 'object')
        for (const [name, each] of Object.entries(value)) visit(each, [...way, name]);
      else {
        const other = typeof value === 'number' ? value + 1 : typeof value === 'boolean' ? !value : `${String(value)}x`;
        const changed = structuredClone(now);
        let holder = changed as unknown as Record<string | number, unknown>;
        for (const step of way.slice(0, -1)) holder = holder[step] as typeof holder;
        holder[way.at(-1) ?? ''] = other;
        if (signedRecordDigest(changed) === signedRecordDigest(now)) places.push(way.join('.'));
      }
    };
    const { signature: _signature, labour: _labour, parts: _parts, trip: _trip, ...shown } = now;
    visit(shown, []);
    expect(places).toEqual([]);
  });
});
