import { describe, expect, test } from 'vitest';
import { type Job, type JobInput, job } from '../../src/records/job.ts';
import { soundJob } from '../../src/rules/sound-job.ts';
import { recordDigest, signedRecordDigest } from '../../src/storage/digest.ts';
import { signatureState } from '../../src/storage/signature-state.ts';

const whole = job.parse({ ...soundJob, notes: 'As found.', parts: [{ what: 'Relay', quantity: '1' }] });

// what the sheet shows: a change of it is a change of what was signed
const shown: Readonly<Partial<Record<keyof Job, Partial<JobInput>>>> = {
  id: { id: '2026-11-24-AAAA' },
  day: { day: '2026-11-25' },
  identity: { identity: { ...soundJob.identity, place: 'Another yard' } },
  vehicle: { vehicle: { ...soundJob.vehicle, plate: 'VLT 4418' } },
  before: { before: { ...soundJob.before, warningLamps: ['engine'] } },
  panels: { panels: [] },
  supply: { supply: [] },
  probePoints: { probePoints: [] },
  connections: { connections: [] },
  ground: { ground: { kind: 'chassis bolt', where: 'elsewhere' } },
  device: { device: { ...soundJob.device, profile: 'another' } as JobInput['device'] },
  placement: { placement: { ...soundJob.placement, zone: 'load area' } as JobInput['placement'] },
  harness: { harness: { loomed: false } },
  after: { after: { ...soundJob.after, warningLamps: ['engine'] } },
  photographs: { photographs: [{ file: 'one.jpg', shows: 'damage' }] },
  notes: { notes: 'Something else.' },
  answers: { answers: [{ rule: 'splice-is-tied', reason: 'no room' }] },
  schema: {},
};
// what only the invoice or the interview uses
const unseen: Readonly<Partial<Record<keyof Job, Partial<JobInput>>>> = {
  $schema: { $schema: './job.json' },
  trip: { trip: '2026-11-25' },
  labour: { labour: { waitingMinutes: 45 } },
  parts: {
    parts: [
      { what: 'Relay', quantity: '2' },
      { what: 'Loom', quantity: '1' },
    ],
  },
  discountPercent: { discountPercent: '5' },
  discountBecause: { discountBecause: 'agreed' },
  depositMinorUnits: { depositMinorUnits: 2000 },
  signature: { signature: { answer: 'refuses', name: 'Ada Quill', remark: 'It rattles.' } },
  interview: { interview: { answered: ['visit'] } },
};
const changed = (change: Partial<JobInput>) =>
  job.parse({ ...soundJob, notes: 'As found.', parts: [{ what: 'Relay', quantity: '1' }], ...change });

test('every section of a record is listed once, as shown on the sheet or not', () => {
  const sections = Object.keys(job.shape).sort();
  expect([...Object.keys(shown), ...Object.keys(unseen)].sort()).toEqual(sections);
});

describe('a signature', () => {
  const signed = (record: Job): Job => ({
    ...record,
    signature: { answer: 'accepts', name: 'Ada Quill', record: signedRecordDigest(whole) },
  });
  test('stands while the record says what was signed', () => expect(signatureState(signed(whole))).toBe('stands'));

  test.each(Object.entries(shown).filter(([section]) => section !== 'schema'))(
    'is void once %s is another',
    (_, change) => {
      expect(signatureState(signed(changed(change)))).toBe('void');
    },
  );

  test.each(Object.entries(unseen).filter(([section]) => section !== 'signature'))(
    'outlives another %s',
    (_, change) => {
      expect(signatureState(signed(changed(change)))).toBe('stands');
    },
  );

  test('itself is no part of what it stands for', () => {
    expect(signedRecordDigest(changed(unseen.signature ?? {}))).toBe(signedRecordDigest(whole));
  });
});

test('the digest of a whole record leaves out only what the interview remembers of itself', () => {
  for (const [section, change] of Object.entries({ ...shown, ...unseen })) {
    const same = ['schema', '$schema', 'interview'].includes(section);
    expect([section, recordDigest(changed(change)) === recordDigest(whole)]).toEqual([section, same]);
  }
});
