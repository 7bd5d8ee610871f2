import { describe, expect, test } from 'vitest';
import { safetyNotes } from '../../src/documents/safety-notes.ts';
import { workOutElectrics } from '../../src/electrics/work-out-electrics.ts';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import { knownVolts, nominalVolts } from '../../src/records/nominal-volts.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { saidIn, viewOf } from '../documents/view-of.ts';

// 24 V and 12 V systems: ISO 16750-2 codes E to H and A to D; which of the two a vehicle has is common practice, no source
const { systemVolts: _recorded, ...unrecorded } = soundJob.vehicle ?? {};
const bare: JobInput = { ...soundJob, vehicle: unrecorded, supply: [], probePoints: [], before: {}, after: {} };
const volts = (change: Partial<JobInput>) => knownVolts(job.parse({ ...bare, ...change }));

describe('the nominal volts of a job', () => {
  test.each<[string, 12 | 24 | null, Partial<JobInput>]>([
    ['read 24, recorded 12', 24, { supply: [{ key: 'out', volts: 25.2 }], vehicle: { systemVolts: 12 } }],
    ['read 12, recorded 24', 12, { supply: [{ key: 'out', volts: 12.6 }], vehicle: { systemVolts: 24 } }],
    ['read 24, not recorded', 24, { supply: [{ key: 'out', volts: 25.2 }] }],
    ['not read, recorded 24', 24, { vehicle: { systemVolts: 24 } }],
    [
      'readings that disagree, recorded 24',
      24,
      {
        supply: [
          { key: 'out', volts: 12.6 },
          { key: 'on', volts: 25 },
        ],
        vehicle: { systemVolts: 24 },
      },
    ],
    ['only the battery at rest', 24, { before: { restVolts: 25.2 } }],
    ['a battery whose two readings disagree', null, { before: { restVolts: 12.6 }, after: { restVolts: 25.2 } }],
    ['nothing', null, {}],
  ])('%s', (_, expected, change) => {
    expect(volts(change)).toBe(expected);
    expect(nominalVolts(job.parse({ ...bare, ...change }))).toBe(expected ?? 12);
  });

  const on24: Partial<JobInput> = {
    supply: [
      { key: 'out', volts: 25.2 },
      { key: 'on', volts: 24.9 },
      { key: 'running', volts: 28.2 },
    ],
  };

  test.each([
    ['recorded as 12', { systemVolts: 12 as const }],
    ['not recorded', {}],
  ])('24 V read, %s: electrics, rules and sheet all say 24', (_, vehicle) => {
    const input = { ...soundJob, ...on24, vehicle: { ...unrecorded, ...vehicle } };
    const facts = soundFacts(input);
    // FAA AC 43.13-1B, table 11-6: a 28 V system may lose 1 V, a 14 V system 0.5 V
    expect(workOutElectrics(facts.job, facts.profile, facts.book).leadDropMillivoltsMax).toBe(1000);
    expect(identifyWires(facts.job, []).systemVolts).toBe(24);
    expect(safetyNotes(facts.job)).toContain('24 volts');
  });

  test('12 V read, recorded as 24: the caution for 24 V still stands on the sheet', () => {
    expect(safetyNotes(job.parse({ ...soundJob, vehicle: { ...unrecorded, systemVolts: 24 } }))).toContain('24 volts');
  });

  test('a sheet names the system that was read where none is recorded, and the recorded one where it is', () => {
    expect(saidIn(viewOf({ ...on24, vehicle: unrecorded }))).toContain('24 V');
    expect(saidIn(viewOf({ vehicle: { ...unrecorded, systemVolts: 12 } }))).toContain('12 V');
  });
});
