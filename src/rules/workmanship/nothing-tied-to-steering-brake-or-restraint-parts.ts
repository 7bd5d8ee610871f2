import { withHarness } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

const nouns: Readonly<Record<string, string>> = {
  steering: 'the steering',
  pedal: 'a pedal',
  'brake line': 'a brake line',
  'restraint wiring': 'restraint wiring',
  'high-voltage cable': 'a high-voltage cable',
  'fuel line': 'a fuel line',
};

/** Nothing is tied to steering, pedals, brake or fuel lines, restraint wiring or high-voltage cable. */
export const nothingTiedToSteeringBrakeOrRestraintParts: Rule = {
  id: 'nothing-tied-to-steering-brake-or-restraint-parts',
  group: 'workmanship',
  severity: 'block',
  summary: 'Nothing is tied to steering, pedals, brake or fuel lines, restraint wiring or high-voltage cable.',
  why: 'A tie there can jam, chafe or disable what keeps people alive.',
  source:
    'common practice, no source; 49 USC 30122(b) (safety equipment is not made inoperative); FAA AC 43.13-1B 11-96(w) for fuel lines',
  check: ({ job }) =>
    (workDone(job).harness?.tiedTo ?? [])
      .filter((part) => part !== 'vehicle harness' && part !== 'bracket')
      .map((part) => ({
        at: part,
        what: `The harness is tied to ${nouns[part]}.`,
        whatToDo: 'Cut that tie now and tie to a bracket or a body harness instead.',
      })),
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
};
