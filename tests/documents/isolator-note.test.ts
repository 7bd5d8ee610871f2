import { describe, expect, test } from 'vitest';
import { safetyNotes } from '../../src/documents/safety-notes.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import { soundJob } from '../../src/rules/sound-job.ts';

/** The sound job with some of its wires on the battery's side of the isolator. */
const onBatterySide = (points: readonly string[], side: 'battery' | 'switched' = 'battery') =>
  job.parse({
    ...soundJob,
    probePoints: (soundJob.probePoints ?? []).map((point) =>
      points.includes(point.name) ? { ...point, isolatorSide: side } : point,
    ),
  });
const pointOf = (lead: string) => soundJob.connections?.find((made) => made.lead === lead)?.point ?? '';
const note = 'live with the isolator off';

// a device whose supply is on the battery's side stays live with the isolator open; its sense and ground leads feed nothing
describe('the note that the device stays live with the isolator open', () => {
  test('is printed where the supply is on the side of the battery', () => {
    expect(safetyNotes(onBatterySide([pointOf('supply')]))).toContain(note);
  });
  test.each(['ignition', 'ground'])('is not printed where only the %s lead is', (lead) => {
    expect(pointOf(lead)).not.toBe('');
    expect(safetyNotes(onBatterySide([pointOf(lead)]))).not.toContain(note);
  });
  test('is not printed where the supply is on the switched side, nor where no side is known', () => {
    expect(safetyNotes(onBatterySide([pointOf('supply')], 'switched'))).not.toContain(note);
    expect(safetyNotes(job.parse(soundJob))).not.toContain(note);
  });
  test.each<Partial<JobInput>>([
    { identity: { ...soundJob.identity, visit: 'removal' } },
    { identity: { ...soundJob.identity, visit: 'wasted visit', wastedBecause: 'no key' } },
    { connections: [] },
  ])('is not printed where nothing was connected: %#', (change) => {
    expect(safetyNotes(job.parse({ ...onBatterySide([pointOf('supply')]), ...change }))).not.toContain(note);
  });
});
