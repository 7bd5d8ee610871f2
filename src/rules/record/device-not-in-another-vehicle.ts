import type { Job } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { isSameVehicle } from '../same-vehicle.ts';
import { soundEarlier } from '../sound-job.ts';

const serialOf = (job: Job) => job.device?.serial?.trim().toUpperCase();

/** Whether a later visit to the vehicle of a job took the device out again. */
function takenOut(fitted: Job, serial: string | undefined, jobs: readonly Job[]): boolean {
  return jobs.some(
    (each) =>
      serial !== undefined &&
      each.device?.removedSerial?.trim().toUpperCase() === serial &&
      each.day >= fitted.day &&
      isSameVehicle(each.vehicle, fitted.vehicle),
  );
}

const words = {
  summary: () => 'The device is not already recorded in another vehicle.',
  why: 'Two vehicles under one device number cannot be told apart later; one of the two records is wrong.',
  says: {
    'in another vehicle': (device: { number: string; day: string; job: string }, voice: Voice) => ({
      what: `The device ${device.number} was recorded in another vehicle on ${voice.day(device.day)} (job ${device.job}).`,
      whatToDo: 'Read the label again; if the device was moved, write that as the reason.',
    }),
  },
};

/** A device is not recorded in two vehicles at once. */
export const deviceNotInAnotherVehicle = defineRule({
  id: 'device-not-in-another-vehicle',
  group: 'record',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job, sameDevice }) => {
    if (job.identity.visit === 'wasted visit' || job.identity.visit === 'removal') return [];
    const serial = serialOf(job);
    const imei = job.device?.imei?.replace(/\D/g, '');
    const number = job.device?.serial ?? job.device?.imei ?? '';
    return sameDevice
      .filter((each) => {
        const same = serial !== undefined && serialOf(each) === serial;
        const sameRadio = imei !== undefined && each.device?.imei?.replace(/\D/g, '') === imei;
        if (!same && !sameRadio) return false;
        return !isSameVehicle(each.vehicle, job.vehicle) && !takenOut(each, serialOf(each), sameDevice);
      })
      .map(({ day, id }) => ({ at: 'device', says: 'in another vehicle', figures: { number, day, job: id } }));
  },
  examples: [
    { name: 'no other job with this device', change: (job) => job, finds: [] },
    {
      name: 'the same device in the same vehicle, earlier',
      change: (job) => job,
      facts: { sameDevice: [soundEarlier] },
      finds: [],
    },
    {
      name: 'the same device in another vehicle',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, vin: '1G4AH59H45G118341' } }),
      facts: { sameDevice: [soundEarlier] },
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device OV3-004417 was recorded in another vehicle on 2026-01-10 (job 2026-01-10-AAAA).',
          whatToDo: 'Read the label again; if the device was moved, write that as the reason.',
        },
      ],
    },
    {
      name: 'another vehicle, from which it was taken out since',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, vin: '1G4AH59H45G118341' } }),
      facts: {
        sameDevice: [
          soundEarlier,
          {
            ...soundEarlier,
            id: '2026-06-01-BBBB',
            day: '2026-06-01',
            device: { profile: 'example-device', removedSerial: 'OV3-004417' },
          },
        ],
      },
      finds: [],
    },
  ],
});
