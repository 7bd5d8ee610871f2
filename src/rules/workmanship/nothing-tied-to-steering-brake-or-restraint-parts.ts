import type { Harness } from '../../records/placement.ts';
import { defineRule } from '../define-rule.ts';
import { withHarness } from '../overlay.ts';
import { workDone } from '../work-done.ts';

type ForbiddenPart = Exclude<Harness['tiedTo'][number], 'vehicle harness' | 'bracket'>;

const nouns: Readonly<Record<ForbiddenPart, string>> = {
  steering: 'the steering',
  pedal: 'a pedal',
  'brake line': 'a brake line',
  'restraint wiring': 'restraint wiring',
  'high-voltage cable': 'a high-voltage cable',
  'fuel line': 'a fuel line',
};

const words = {
  summary: () => 'Nothing is tied to steering, pedals, brake or fuel lines, restraint wiring or high-voltage cable.',
  why: 'A tie there can jam, chafe or disable what keeps people alive.',
  says: {
    'tied to it': (tie: { part: ForbiddenPart }) => ({
      what: `The harness is tied to ${nouns[tie.part]}.`,
      whatToDo: 'Cut that tie now and tie to a bracket or a body harness instead.',
    }),
  },
};

/** Nothing is tied to steering, pedals, brake or fuel lines, restraint wiring or high-voltage cable. */
export const nothingTiedToSteeringBrakeOrRestraintParts = defineRule({
  id: 'nothing-tied-to-steering-brake-or-restraint-parts',
  group: 'workmanship',
  severity: 'block',
  source:
    'common practice, no source; 49 USC 30122(b) (safety equipment is not made inoperative); FAA AC 43.13-1B 11-96(w) for fuel lines',
  words,
  check: ({ job }) =>
    (workDone(job).harness?.tiedTo ?? []).flatMap((part) =>
      part === 'vehicle harness' || part === 'bracket' ? [] : [{ at: part, says: 'tied to it', figures: { part } }],
    ),
  examples: [
    { name: 'tied to the vehicle harness', change: withHarness({ tiedTo: ['vehicle harness', 'bracket'] }), finds: [] },
    {
      name: 'tied to the steering',
      change: withHarness({ tiedTo: ['steering'] }),
      finds: [
        {
          at: 'steering',
          severity: 'block',
          what: 'The harness is tied to the steering.',
          whatToDo: 'Cut that tie now and tie to a bracket or a body harness instead.',
        },
      ],
    },
    {
      name: 'tied to restraint wiring and a brake line',
      change: withHarness({ tiedTo: ['restraint wiring', 'brake line'] }),
      finds: [
        {
          at: 'restraint wiring',
          severity: 'block',
          what: 'The harness is tied to restraint wiring.',
          whatToDo: 'Cut that tie now and tie to a bracket or a body harness instead.',
        },
        {
          at: 'brake line',
          severity: 'block',
          what: 'The harness is tied to a brake line.',
          whatToDo: 'Cut that tie now and tie to a bracket or a body harness instead.',
        },
      ],
    },
  ],
});
