import type { Rule, RuleHit } from './rule.ts';

/** A key-out reading at supply level was taken at least ten minutes after key out. */
export const keyOutWaitIsLongEnough: Rule = {
  id: 'key-out-wait-is-long-enough',
  group: 'wiring',
  severity: 'reason',
  summary: 'A key-out reading at supply level was taken at least ten minutes after key out.',
  why: 'Retained power keeps accessory and ignition lines live for minutes; a short wait proves nothing.',
  source: 'common practice, no source',
  check: ({ evidence }) =>
    evidence.wires.flatMap((wire) =>
      wire.traps
        .filter((trap) => trap.kind === 'retained power')
        .map(
          (trap): RuleHit => ({
            at: wire.point,
            what: trap.sentence,
            whatToDo: 'Take the key out, wait ten minutes, read again and record the wait.',
          }),
        ),
    ),
  examples: [
    { name: 'a wait of twelve minutes', change: (job) => job, finds: [] },
    {
      name: 'a wait of one minute',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P1'
            ? {
                ...point,
                readings: (point.readings ?? []).map((each) =>
                  each.key === 'out' ? { ...each, secondsWaited: 60 } : each,
                ),
              }
            : point,
        ),
      }),
      finds: ['P1'],
    },
  ],
};
