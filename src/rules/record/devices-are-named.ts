import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Hit } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const visit =
  (kind: NonNullable<NonNullable<JobInput['identity']>['visit']>, device: Partial<NonNullable<JobInput['device']>>) =>
  (job: JobInput): JobInput => ({
    ...job,
    identity: { ...job.identity, visit: kind },
    device: { profile: 'example-device', ...device },
  });

const words = {
  summary: () => 'The device fitted and the device taken out are each known by their own number.',
  why: 'A device without a number cannot be found, returned or told from the next one.',
  says: {
    'fitted one not named': () => ({
      what: 'Neither serial nor IMEI of the device fitted is recorded.',
      whatToDo: 'Read it from the label before the panel is closed.',
    }),
    'removed one not named': () => ({
      what: 'The serial of the device taken out is not recorded.',
      whatToDo: 'Read it from the label of the device you hold.',
    }),
    'both the same': (devices: { serial: string }) => ({
      what: `The device taken out and the device fitted have the same serial, ${devices.serial}.`,
      whatToDo: 'Read both labels again.',
    }),
  },
};

/** The device fitted and the device taken out are each known by their own number. */
export const devicesAreNamed = defineRule({
  id: 'devices-are-named',
  group: 'record',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { device } = workDone(job);
    if (device === undefined) return [];
    const kind = job.identity.visit;
    const removed = device.removedSerial ?? (kind === 'removal' ? device.serial : undefined);
    const hits: Hit<typeof words>[] = [];
    if (kind !== 'removal' && kind !== 'service call' && device.serial === undefined && device.imei === undefined)
      hits.push({ at: 'device', says: 'fitted one not named' });
    if ((kind === 'swap' || kind === 'removal') && removed === undefined)
      hits.push({ at: 'device', says: 'removed one not named' });
    if (kind === 'swap' && removed !== undefined && removed === device.serial)
      hits.push({ at: 'device', says: 'both the same', figures: { serial: removed } });
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
});
