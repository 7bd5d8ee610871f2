import type { JobInput } from '../../records/job.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

const visit =
  (kind: NonNullable<NonNullable<JobInput['identity']>['visit']>, device: Partial<NonNullable<JobInput['device']>>) =>
  (job: JobInput): JobInput => ({
    ...job,
    identity: { ...job.identity, visit: kind },
    device: { profile: 'example-device', ...device },
  });

/** The device fitted and the device taken out are each known by their own number. */
export const devicesAreNamed: Rule = {
  id: 'devices-are-named',
  group: 'record',
  severity: 'reason',
  summary: 'The device fitted and the device taken out are each known by their own number.',
  why: 'A device without a number cannot be found, returned or told from the next one.',
  source: 'common practice, no source',
  check: ({ job }) => {
    const { device } = workDone(job);
    if (device === undefined) return [];
    const kind = job.identity.visit;
    const removed = device.removedSerial ?? (kind === 'removal' ? device.serial : undefined);
    const hits: RuleHit[] = [];
    if (kind !== 'removal' && kind !== 'service call' && device.serial === undefined && device.imei === undefined)
      hits.push({
        at: 'device',
        what: 'Neither serial nor IMEI of the device fitted is recorded.',
        whatToDo: 'Read it from the label before the panel is closed.',
      });
    if ((kind === 'swap' || kind === 'removal') && removed === undefined)
      hits.push({
        at: 'device',
        what: 'The serial of the device taken out is not recorded.',
        whatToDo: 'Read it from the label of the device you hold.',
      });
    if (kind === 'swap' && removed !== undefined && removed === device.serial)
      hits.push({
        at: 'device',
        what: `The device taken out and the device fitted have the same serial, ${removed}.`,
        whatToDo: 'Read both labels again.',
      });
    return hits;
  },
  examples: [
    { name: 'a new fit with its serial', change: (job) => job, finds: [] },
    { name: 'a swap with both serials', change: visit('swap', { serial: 'N-2', removedSerial: 'N-1' }), finds: [] },
    {
      name: 'a new fit without a number',
      change: visit('new fit', {}),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'Neither serial nor IMEI of the device fitted is recorded.',
          whatToDo: 'Read it from the label before the panel is closed.',
        },
      ],
    },
    {
      name: 'a swap without the old serial',
      change: visit('swap', { serial: 'N-2' }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The serial of the device taken out is not recorded.',
          whatToDo: 'Read it from the label of the device you hold.',
        },
      ],
    },
    {
      name: 'a swap of a device for itself',
      change: visit('swap', { serial: 'N-1', removedSerial: 'N-1' }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device taken out and the device fitted have the same serial, N-1.',
          whatToDo: 'Read both labels again.',
        },
      ],
    },
    { name: 'a removal with the serial of the device', change: visit('removal', { serial: 'N-1' }), finds: [] },
    {
      name: 'a removal without a number',
      change: visit('removal', {}),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The serial of the device taken out is not recorded.',
          whatToDo: 'Read it from the label of the device you hold.',
        },
      ],
    },
  ],
};
