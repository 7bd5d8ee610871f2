import type { Trap } from '../../evidence/evidence.ts';
import { keptPowerSinceYear, keyOutWaitSeconds, retainedPowerSeconds } from '../../evidence/surroundings.ts';
import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const waited =
  (name: string, seconds: number, more: readonly { key: 'out'; volts: number; secondsWaited: number }[] = []) =>
  (job: JobInput): JobInput => ({
    ...job,
    probePoints: (job.probePoints ?? []).map((point) =>
      point.name === name
        ? {
            ...point,
            readings: [
              ...(point.readings ?? []).map((each) =>
                each.key === 'out' ? { ...each, volts: 12.57, secondsWaited: seconds } : each,
              ),
              ...more,
            ],
          }
        : point,
    ),
  });

const words = {
  summary: (voice: Voice) =>
    `A key-out reading at supply level was taken at least ${voice.number(keyOutWaitSeconds.long / 60)} minutes after key out, ${voice.number(keyOutWaitSeconds.short / 60)} on a vehicle with a key built before ${keptPowerSinceYear}.`,
  why: 'Retained power keeps accessory and ignition lines live for minutes: a wire joined to a lead after a short wait may be anything. Where a later reading of the same wire proves it, the short wait does no harm; on a wire nothing is joined to it is advice.',
  says: {
    'too short': (wire: { trap: Trap; button: boolean; minutes: number }, voice: Voice) => ({
      what: voice.trap(wire.trap),
      whatToDo: wire.button
        ? `Lock the vehicle, let it fall asleep with the key well away, wait ${voice.number(wire.minutes)} minutes, read again and record the wait.`
        : `Take the key out, wait ${voice.number(wire.minutes)} minutes, read again and record the wait.`,
    }),
  },
};

/** A key-out reading at supply level was taken at least ten minutes after key out. */
export const keyOutWaitIsLongEnough = defineRule({
  id: 'key-out-wait-is-long-enough',
  group: 'wiring',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job, evidence }) => {
    const joined = new Set((workDone(job).connections ?? []).map((made) => made.point));
    const button = job.vehicle.start === 'button';
    const minutes = retainedPowerSeconds(job.vehicle) / 60;
    return evidence.wires
      .filter((wire) => wire.conclusion.kind !== 'concluded')
      .flatMap((wire) =>
        wire.traps
          .filter((trap) => trap.kind === 'retained power')
          .slice(0, 1)
          .map((trap) => ({
            at: wire.point,
            says: 'too short',
            figures: { trap, button, minutes },
            ...(joined.has(wire.point) ? {} : { severity: 'advise' }),
          })),
      );
  },
  examples: [
    { name: 'a wait of twelve minutes', change: (job) => job, finds: [] },
    {
      name: 'a wait of one minute on the supply wire',
      change: waited('P1', 60),
      finds: [
        {
          at: 'P1',
          severity: 'block',
          what: 'P1 reads 12.57 V 60 s after key out: power may be kept on for minutes, so wait 10 min and read again.',
          whatToDo: 'Take the key out, wait ten minutes, read again and record the wait.',
        },
      ],
    },
    {
      name: 'a wait of one minute, and twelve minutes in a second reading',
      change: waited('P1', 60, [{ key: 'out', volts: 12.57, secondsWaited: 720 }]),
      finds: [],
    },
    {
      name: 'a wait of one minute on a wire nothing is joined to (advice)',
      change: waited('P3', 60),
      finds: [
        {
          at: 'P3',
          severity: 'advise',
          what: 'P3 reads 12.57 V 60 s after key out: power may be kept on for minutes, so wait 10 min and read again.',
          whatToDo: 'Take the key out, wait ten minutes, read again and record the wait.',
        },
      ],
    },
  ],
});
