import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type JobInput, visitKinds } from '../../src/records/job.ts';
import { languages } from '../../src/records/language.ts';
import { vehicleClasses } from '../../src/records/vehicle.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { fillTemplate } from '../../src/typesetting/markup/fill-template.ts';
import { parseMarkup } from '../../src/typesetting/markup/parse-markup.ts';
import { saidIn, viewOf, without } from './view-of.ts';

const file = path.resolve(import.meta.dirname, '../../templates/handover.hbs');
const template = readFileSync(file, 'utf8');
const { book } = soundFacts(soundJob);

const sections = [
  'before',
  'panels',
  'supply',
  'probePoints',
  'connections',
  'ground',
  'device',
  'placement',
  'harness',
  'after',
  'photographs',
  'labour',
  'parts',
  'notes',
  'signature',
] as const satisfies readonly (keyof JobInput)[];
const vehicleFields = Object.keys(soundJob.vehicle ?? {}) as (keyof NonNullable<JobInput['vehicle']>)[];
const identityFields = Object.keys(soundJob.identity ?? {}) as (keyof NonNullable<JobInput['identity']>)[];

const fewer = <Fields extends object>(fields: Fields, left: readonly (keyof Fields)[]): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([name]) => left.includes(name as keyof Fields))) as Fields;

/** The sound job with any of its parts missing. */
const anyRecord = fc
  .record({
    missing: fc.subarray([...sections]),
    vehicle: fc.subarray(vehicleFields),
    identity: fc.subarray(identityFields),
    visit: fc.option(fc.constantFrom(...visitKinds), { nil: undefined }),
    kind: fc.constantFrom(...vehicleClasses),
    drive: fc.constantFrom('combustion' as const, 'hybrid' as const, 'electric' as const),
  })
  .map(
    ({ missing, vehicle, identity, visit, kind, drive }): Partial<JobInput> => ({
      ...without(...missing),
      vehicle: fewer({ ...soundJob.vehicle, class: kind, drive }, vehicle),
      identity: { ...fewer({ ...soundJob.identity }, identity), ...(visit === undefined ? {} : { visit }) },
    }),
  );

describe('any record, however little it says', () => {
  test.each(languages)('fills the template in %s without a gap in tags or words', (language) => {
    fc.assert(
      fc.property(anyRecord, (change) => {
        const view = viewOf(change, { book: { ...book, language } });
        expect(saidIn(view)).not.toMatch(/undefined|\bnull\b|NaN|\[object|Infinity/);
        const tree = parseMarkup(fillTemplate(template, file, {}, view), file);
        expect(tree.tag).toBe('document');
      }),
      { numRuns: 60 },
    );
  });

  test('says of no lead, fuse or place that the record does not hold', () => {
    fc.assert(
      fc.property(anyRecord, (change) => {
        const { words: _labels, ...view } = viewOf(change);
        const said = saidIn({ summary: view.summary, notes: view.notes });
        const has = (section: keyof JobInput) => !(section in change) || change[section] !== undefined;
        if (!has('connections')) expect(said).not.toMatch(/Joined:|Fuses?:|blown fuse|prove/);
        if (!has('placement')) expect(said).not.toMatch(/It sits/);
        if (!has('device')) expect(said).not.toMatch(/seen working|cover or move the device/);
        if (!has('after')) expect(said).not.toMatch(/After the work|Not working|Lit /);
        if (!has('probePoints')) expect(said).not.toMatch(/prove/);
      }),
      { numRuns: 80 },
    );
  });
});
