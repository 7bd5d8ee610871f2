import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobInput } from '../../src/records/job.ts';
import { checkJob } from '../../src/rules/check-job.ts';
import { rules } from '../../src/rules/index.ts';
import { openFindings } from '../../src/rules/open-findings.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { terminalFinding } from '../../src/words/terminal-finding.ts';

const sections = Object.keys(soundJob).filter((key) => !['schema', 'id', 'day'].includes(key));
const drop = (job: JobInput, keys: readonly string[]): JobInput =>
  Object.fromEntries(Object.entries(job).filter(([key]) => !keys.includes(key))) as JobInput;

/** Failing examples laid over each other, in any number, and any sections taken away: the jobs that occur and worse. */
const failing = rules.flatMap((rule) => rule.examples.filter((example) => example.finds.length > 0));
const jobs = fc.tuple(fc.subarray(failing, { maxLength: 6 }), fc.subarray(sections)).map(([examples, gone]) =>
  drop(
    examples.reduce((job, example) => example.change(job), soundJob),
    gone,
  ),
);

describe('any job', () => {
  test('is checked without a failure of the program, twice with the same result, every message whole', () => {
    fc.assert(
      fc.property(jobs, fc.boolean(), (input, named) => {
        const facts = soundFacts(input, named ? {} : { profile: null });
        const findings = checkJob(facts);
        expect(checkJob(soundFacts(input, named ? {} : { profile: null }))).toEqual(findings);
        for (const finding of findings) {
          const { what, whatToDo } = terminalFinding(finding, facts.job.vehicle);
          expect(what).not.toMatch(/undefined|NaN|\[object/);
          expect(whatToDo.length).toBeGreaterThan(3);
          expect(rules.map((rule) => rule.id)).toContain(finding.rule);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('stays closed by a block whatever is answered, and opens once every reason has its answer', () => {
    fc.assert(
      fc.property(jobs, (input) => {
        const findings = checkJob(soundFacts(input));
        const answers = findings.map(({ rule, at }) => ({ rule, ...(at === '' ? {} : { at }), reason: 'seen' }));
        const { job } = soundFacts({ ...input, answers: answers.slice(0, 60) });
        const open = openFindings(job, findings.slice(0, 60));
        expect(open).toEqual(findings.slice(0, 60).filter((finding) => finding.severity === 'block'));
      }),
      { numRuns: 100 },
    );
  });
});

/** What the trade asks for, and the rules that answer it. */
const asked: readonly (readonly [group: string, what: string, ids: readonly string[]])[] = [
  ['wiring', 'each wire proven', ['constant-is-proven', 'ignition-is-proven', 'ground-is-proven']],
  ['wiring', 'verdict matches readings', ['verdict-matches-readings', 'wires-do-not-contradict-each-other']],
  ['wiring', 'wait long enough', ['key-out-wait-is-long-enough']],
  ['wiring', 'ignition holds through crank', ['ignition-holds-through-crank']],
  [
    'wiring',
    'no tap on data, restraint or high-voltage wiring',
    ['no-tap-on-data-wire', 'no-tap-on-restraint-wiring', 'no-tap-on-high-voltage-wiring'],
  ],
  [
    'wiring',
    'supply within the device’s window, also in crank',
    ['supply-within-device-window', 'device-window-covers-a-supply-code', 'no-over-voltage'],
  ],
  [
    'wiring',
    'fuse in each supply lead, right size, near the tap',
    ['supply-lead-is-fused', 'fuse-suits-the-wire', 'fuse-bears-the-load', 'fuse-is-near-the-tap'],
  ],
  ['wiring', 'drop and ground drop', ['voltage-drop-is-small', 'ground-drop-is-small', 'ground-is-on-bare-metal']],
  [
    'wiring',
    'wire no smaller than the lead it feeds',
    ['wire-is-no-smaller-than-the-lead-it-feeds', 'lead-is-no-smaller-than-device-lead', 'lead-carries-the-load'],
  ],
  ['wiring', 'loaded reading after connecting', ['loaded-reading-taken']],
  ['wiring', 'standing drain', ['standing-drain-is-acceptable', 'battery-rests-charged']],
  ['wiring', 'charging volts before and after', ['charging-volts-are-normal']],
  ['wiring', '24 V and isolators', ['no-supply-from-half-a-battery-pair', 'isolator-side-is-recorded']],
  ['workmanship', 'no insulation-displacing taps', ['no-insulation-displacing-tap-on-supply-lead']],
  ['workmanship', 'splice covered, tied, not nicked', ['splice-is-covered', 'splice-is-tied', 'strands-are-not-cut']],
  ['workmanship', 'tape at least an inch', ['tape-is-long-enough']],
  ['workmanship', 'method suits the place', ['method-suits-a-wet-place', 'no-twist-only-joint']],
  ['workmanship', 'splices staggered', ['splices-are-staggered']],
  ['workmanship', 'fuses taped and tied', ['fuse-is-taped-and-tied']],
  [
    'workmanship',
    'harness loomed, tied, slack, clear',
    [
      'harness-is-loomed',
      'harness-is-tied-at-intervals',
      'harness-has-slack',
      'harness-is-clear-of-edges-heat-and-moving-parts',
      'bend-radius-is-wide-enough',
    ],
  ],
  [
    'workmanship',
    'nothing tied to steering, pedals, brake or restraint',
    ['nothing-tied-to-steering-brake-or-restraint-parts'],
  ],
  ['workmanship', 'pull test', ['joint-held-a-tug']],
  ['placement', 'air bags and head strike', ['clear-of-air-bags', 'clear-of-head-strike-areas']],
  ['placement', 'windscreen', ['windscreen-area-is-respected', 'windscreen-mount-as-the-profile-says']],
  ['placement', 'sky above the antenna', ['sky-above-the-antenna-is-not-metal', 'orientation-as-the-profile-says']],
  ['placement', 'distance from people', ['distance-from-people']],
  ['placement', 'heat and water', ['within-heat-limit', 'away-from-heat-sources', 'dry-or-sealed']],
  ['placement', 'firm', ['device-is-firm', 'fixing-points-suffice']],
  ['placement', 'blocks nothing', ['does-not-block-view-vents-or-controls']],
  ['placement', 'reach', ['reachable-for-service', 'not-within-casual-reach']],
  ['close-up', 'fasteners and plastics', ['every-fastener-is-back', 'plastics-not-over-tightened']],
  ['close-up', 'lamps and functions', ['warning-lamps-no-worse', 'functions-work-again']],
  ['close-up', 'device lamp and activity', ['device-lamp-as-the-profile-says', 'device-is-active']],
  ['close-up', 'supply reading after', ['supply-read-after']],
  ['record', 'VIN plausible', ['vin-is-plausible', 'vin-year-agrees']],
  ['record', 'odometer', ['odometer-not-below-earlier']],
  [
    'record',
    'device not in another vehicle, numbers right',
    ['device-not-in-another-vehicle', 'imei-is-plausible', 'iccid-is-plausible'],
  ],
  ['record', 'times possible', ['times-are-possible']],
  [
    'record',
    'photographs',
    ['photographs-are-present', 'photographs-asked-for-are-present', 'photographs-where-a-rule-asks'],
  ],
  ['record', 'signature or reason', ['signature-or-reason']],
];

test.each(asked)('%s, %s: there are rules for it, in that group', (group, _what, ids) => {
  expect(ids.map((id) => rules.find((rule) => rule.id === id)?.group)).toEqual(ids.map(() => group));
});
