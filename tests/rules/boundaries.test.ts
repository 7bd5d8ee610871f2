import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { book } from '../../src/records/book.ts';
import { deviceProfiles } from '../../src/records/device-profile.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import type { Severity } from '../../src/rules/finding.ts';
import type { JobFacts } from '../../src/rules/job-facts.ts';
import { nickedStrandsMax } from '../../src/rules/nicked-strands-max.ts';
import { withConnection, withHarness, withPlacement } from '../../src/rules/overlay.ts';
import { awayFromHeatSources } from '../../src/rules/placement/away-from-heat-sources.ts';
import { clearOfAirBags } from '../../src/rules/placement/clear-of-air-bags.ts';
import { deviceIsFirm } from '../../src/rules/placement/device-is-firm.ts';
import { distanceFromPeople } from '../../src/rules/placement/distance-from-people.ts';
import { fixingPointsSuffice } from '../../src/rules/placement/fixing-points-suffice.ts';
import { windscreenAreaIsRespected } from '../../src/rules/placement/windscreen-area-is-respected.ts';
import { withinHeatLimit } from '../../src/rules/placement/within-heat-limit.ts';
import type { AnyRule } from '../../src/rules/rule.ts';
import type { RuleExample } from '../../src/rules/rule-example.ts';
import { bendRadiusIsWideEnough } from '../../src/rules/workmanship/bend-radius-is-wide-enough.ts';
import { harnessIsTiedAtIntervals } from '../../src/rules/workmanship/harness-is-tied-at-intervals.ts';
import { nothingTiedToSteeringBrakeOrRestraintParts } from '../../src/rules/workmanship/nothing-tied-to-steering-brake-or-restraint-parts.ts';
import { spliceIsCovered } from '../../src/rules/workmanship/splice-is-covered.ts';
import { splicesAreStaggered } from '../../src/rules/workmanship/splices-are-staggered.ts';
import { strandsAreNotCut } from '../../src/rules/workmanship/strands-are-not-cut.ts';
import { tapeIsLongEnough } from '../../src/rules/workmanship/tape-is-long-enough.ts';
import { spokenRules as rules } from './spoken-rules.ts';

const handRules = rules.filter((rule) => ['workmanship', 'placement', 'close-up'].includes(rule.group));

const readJson = (path: string): unknown => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
const written = readJson('../../sample-jobs/jobs/2026/2026-11-24-KX4D.json') as JobInput;
const devices = deviceProfiles.parse(readJson('../../sample-jobs/devices.json')).devices;

const unchanged = (input: JobInput): JobInput => input;

function factsWith(change: RuleExample['change'], more: Partial<JobFacts> = {}): JobFacts {
  return {
    job: job.parse(change(written)),
    evidence: { systemVolts: 12, supply: {}, wires: [], traps: [] },
    book: book.parse(readJson('../../sample-jobs/book.json')),
    profile: devices.find((profile) => profile.id === written.device?.profile) ?? null,
    payer: null,
    earlier: [],
    sameDevice: [],
    photographFiles: [],
    ...more,
  };
}

function hits(
  rule: Pick<AnyRule, 'severity'> & {
    readonly check: (facts: JobFacts) => readonly { readonly at: string; readonly severity?: Severity }[];
  },
  change: RuleExample['change'],
  more: Partial<JobFacts> = {},
): readonly string[] {
  return rule.check(factsWith(change, more)).map((hit) => `${hit.at} ${hit.severity ?? rule.severity}`);
}

const taped = (millimetres: number) => withConnection('supply', { covered: 'tape', tapeMillimetres: millimetres });
const nicked = (strands: number, awg: number) =>
  withConnection('supply', { stripped: 'strands nicked', nickedStrands: strands, gauge: { awg } });
const ties = (millimetres: number) => withHarness({ tied: true, tieIntervalMillimetres: millimetres });
const bend = (times: number) => withHarness({ bendRadiusTimesDiameter: times });
const onGlass = (below: number | undefined, above: number | undefined) =>
  withPlacement({
    zone: 'windscreen',
    inSightLine: false,
    belowSweptTopMillimetres: below,
    aboveSweptBottomMillimetres: above,
  });

const onDay =
  (day: string, change: RuleExample['change']): RuleExample['change'] =>
  (input) => ({ ...change(input), day });
const onVehicle =
  (fields: JobInput['vehicle']): RuleExample['change'] =>
  (input) => ({ ...onGlass(500, 500)(input), vehicle: { ...input.vehicle, ...fields } });
const antenna = (belowGlassTopMillimetres: number | undefined, inSweptArea: boolean | undefined) =>
  withPlacement({ zone: 'windscreen', inSightLine: false, belowGlassTopMillimetres, inSweptArea });

/** rule, what is laid over the job, change, expected places with severities */
const boundaries: readonly (readonly [AnyRule, string, RuleExample['change'], readonly string[]])[] = [
  [tapeIsLongEnough, '25 mm of tape', taped(25), []],
  [tapeIsLongEnough, '24 mm of tape', taped(24), ['supply reason']],
  [tapeIsLongEnough, '26 mm of tape', taped(26), []],
  [splicesAreStaggered, 'joints 26 mm apart', withConnection('supply', { nextJointMillimetres: 26 }), []],
  [splicesAreStaggered, 'joints 25 mm apart', withConnection('supply', { nextJointMillimetres: 25 }), []],
  [
    splicesAreStaggered,
    'joints 24 mm apart',
    withConnection('supply', { nextJointMillimetres: 24 }),
    ['supply advise'],
  ],
  // FAA AC 43.13-1B table 11-13
  [strandsAreNotCut, '2 nicked in 14 AWG', nicked(2, 14), []],
  [strandsAreNotCut, '1 nicked in 14 AWG', nicked(1, 14), []],
  [strandsAreNotCut, '3 nicked in 12 AWG', nicked(3, 12), []],
  [strandsAreNotCut, '5 nicked in 8 AWG', nicked(5, 8), []],
  [strandsAreNotCut, '3 nicked in 14 AWG', nicked(3, 14), ['supply reason']],
  [strandsAreNotCut, '4 nicked in 12 AWG', nicked(4, 12), []],
  [strandsAreNotCut, '5 nicked in 10 AWG', nicked(5, 10), ['supply reason']],
  [strandsAreNotCut, '6 nicked in 8 AWG', nicked(6, 8), []],
  [strandsAreNotCut, '7 nicked in 8 AWG', nicked(7, 8), ['supply reason']],
  // FAA AC 43.13-1B 11-158(b), 11-96(a)
  [harnessIsTiedAtIntervals, 'ties 304 mm apart', ties(304), []],
  [harnessIsTiedAtIntervals, 'ties 609 mm apart', ties(609), ['harness advise']],
  [harnessIsTiedAtIntervals, 'ties 305 mm apart', ties(305), []],
  [harnessIsTiedAtIntervals, 'ties 306 mm apart', ties(306), ['harness advise']],
  [harnessIsTiedAtIntervals, 'ties 610 mm apart', ties(610), ['harness advise']],
  [harnessIsTiedAtIntervals, 'ties 611 mm apart', ties(611), ['harness reason']],
  // Army TM 1-1500-204-23-4
  [bendRadiusIsWideEnough, 'a bend of 10.1 diameters', bend(10.1), []],
  [bendRadiusIsWideEnough, 'a bend of 3.1 diameters', bend(3.1), ['harness advise']],
  [bendRadiusIsWideEnough, 'a bend of 10 diameters', bend(10), []],
  [bendRadiusIsWideEnough, 'a bend of 9.9 diameters', bend(9.9), ['harness advise']],
  [bendRadiusIsWideEnough, 'a bend of 3 diameters', bend(3), ['harness advise']],
  [bendRadiusIsWideEnough, 'a bend of 2.9 diameters', bend(2.9), ['harness reason']],
  // 49 CFR 393.60(e)(1)(ii)
  [windscreenAreaIsRespected, '216 mm below the top', onGlass(216, undefined), []],
  [windscreenAreaIsRespected, '217 mm below the top', onGlass(217, undefined), ['windscreen reason']],
  [windscreenAreaIsRespected, '175 mm above the bottom', onGlass(undefined, 175), []],
  [windscreenAreaIsRespected, '176 mm above the bottom', onGlass(undefined, 176), ['windscreen reason']],
  [windscreenAreaIsRespected, 'far from the top but low', onGlass(500, 175), []],
  [windscreenAreaIsRespected, 'between the two limits', onGlass(217, 176), ['windscreen reason']],
  [windscreenAreaIsRespected, 'not measured', onGlass(undefined, undefined), ['windscreen reason']],
  [windscreenAreaIsRespected, '215 mm below the top', onGlass(215, undefined), []],
  [windscreenAreaIsRespected, '174 mm above the bottom', onGlass(undefined, 174), []],
  // before 87 FR 12596 became effective on 6 May 2022: 4 in
  [windscreenAreaIsRespected, '100 mm on 5 May 2022', onDay('2022-05-05', onGlass(100, undefined)), []],
  [
    windscreenAreaIsRespected,
    '101 mm on 5 May 2022',
    onDay('2022-05-05', onGlass(101, undefined)),
    ['windscreen reason'],
  ],
  [windscreenAreaIsRespected, '216 mm on 6 May 2022', onDay('2022-05-06', onGlass(216, undefined)), []],
  // 49 CFR 390.5: from 4536 kg; where the weight is unknown the class decides
  [windscreenAreaIsRespected, 'a van of 4536 kg', onVehicle({ grossWeightKilograms: 4536 }), ['windscreen reason']],
  [windscreenAreaIsRespected, 'a van of 4535 kg', onVehicle({ grossWeightKilograms: 4535 }), ['windscreen advise']],
  [windscreenAreaIsRespected, 'a heavy truck', onVehicle({ class: 'heavy truck' }), ['windscreen reason']],
  [windscreenAreaIsRespected, 'a bus', onVehicle({ class: 'bus' }), ['windscreen reason']],
  [windscreenAreaIsRespected, 'a car', onVehicle({ class: 'car' }), ['windscreen advise']],
  [windscreenAreaIsRespected, 'plant', onVehicle({ class: 'plant' }), ['windscreen advise']],
  // common practice, no source
  [awayFromHeatSources, '101 mm from a hot part', withPlacement({ heatMillimetres: 101 }), []],
  [awayFromHeatSources, '100 mm from a hot part', withPlacement({ heatMillimetres: 100 }), []],
  [awayFromHeatSources, '99 mm from a hot part', withPlacement({ heatMillimetres: 99 }), ['device reason']],
  [withinHeatLimit, '-20 °C where -20 °C is borne', withPlacement({ expectedCelsiusMin: -20 }), []],
  [withinHeatLimit, '-21 °C where -20 °C is borne', withPlacement({ expectedCelsiusMin: -21 }), ['device reason']],
  // 47 CFR 2.1091(b)
  [distanceFromPeople, '201 mm from people', withPlacement({ personMillimetres: 201 }), []],
  [distanceFromPeople, '200 mm from people', withPlacement({ personMillimetres: 200 }), []],
  [distanceFromPeople, '199 mm from people', withPlacement({ personMillimetres: 199 }), ['device reason']],
  [distanceFromPeople, 'no distance measured', withPlacement({ personMillimetres: undefined }), ['device advise']],
  [withinHeatLimit, '59 °C where 60 °C is borne', withPlacement({ expectedCelsiusMax: 59 }), []],
  [withinHeatLimit, '60 °C where 60 °C is borne', withPlacement({ expectedCelsiusMax: 60 }), []],
  [withinHeatLimit, '61 °C where 60 °C is borne', withPlacement({ expectedCelsiusMax: 61 }), ['device reason']],
  [fixingPointsSuffice, 'three points', withPlacement({ fixing: 'screws', fixingPoints: 3 }), []],
  [fixingPointsSuffice, 'two points', withPlacement({ fixing: 'screws', fixingPoints: 2 }), []],
  [fixingPointsSuffice, 'one point', withPlacement({ fixing: 'screws', fixingPoints: 1 }), ['device reason']],
];

describe('limits of the hand rules', () => {
  test.each(boundaries.map(([rule, name, ...rest]) => [rule.id, name, rule, ...rest] as const))(
    '%s: %s',
    (_id, _name, rule, change, finds) => {
      expect(hits(rule, change)).toEqual(finds);
    },
  );

  test('a windscreen outside commerce, or outside the United States, is a matter of local code', () => {
    const privateCar: RuleExample['change'] = (input) => {
      const placed = onGlass(500, 500)(input);
      return { ...placed, vehicle: { ...placed.vehicle, commercial: false } };
    };
    expect(hits(windscreenAreaIsRespected, privateCar)).toEqual(['windscreen advise']);
    const home = factsWith(unchanged).book;
    const abroad = { ...home, business: { ...home.business, address: { ...home.business.address, country: 'ES' } } };
    expect(hits(windscreenAreaIsRespected, onGlass(500, 500), { book: abroad })).toEqual(['windscreen advise']);
  });

  // 49 CFR 393.60(e)(1)(i): 6 in, outside the swept area
  test.each([
    [151, false, []],
    [152, false, []],
    [153, false, ['windscreen reason']],
    [152, true, ['windscreen reason']],
    [153, true, ['windscreen reason', 'windscreen reason']],
    [undefined, false, ['windscreen reason']],
    [152, undefined, ['windscreen reason']],
  ])('an antenna %s mm below the top of the glass, swept by the wipers: %s', (below, swept, finds) => {
    const profile = devices.find((each) => each.id === written.device?.profile) ?? null;
    const asAntenna = profile === null ? null : { ...profile, vehicleSafetyTechnology: false };
    expect(hits(windscreenAreaIsRespected, antenna(below, swept), { profile: asAntenna })).toEqual(finds);
    expect(hits(windscreenAreaIsRespected, antenna(below, swept))).toEqual(['windscreen reason']);
  });

  test('in Great Britain the note names the zone in front of the driver (MOT inspection manual section 3)', () => {
    const home = factsWith(unchanged).book;
    const britain = { ...home, business: { ...home.business, address: { ...home.business.address, country: 'GB' } } };
    const rule = rules.find((each) => each.id === windscreenAreaIsRespected.id);
    const [hit] = rule?.check(factsWith(onGlass(500, 500), { book: britain })) ?? [];
    expect(hit?.whatToDo).toMatch(/290 mm.*350 mm.*10 mm.*40 mm/);
  });

  test.each([
    [0.75, 2],
    [2.5, 2],
    [3.31, 4],
    [6, 4],
    [8.37, 6],
    [10, 6],
  ])('%d mm² of copper may have %d nicked strands', (squareMillimetres, strands) => {
    expect(nickedStrandsMax({ squareMillimetres })).toBe(strands);
  });

  test('a loose device, an air-bag path, a tied steering part and a bare live joint stop the handover', () => {
    expect(hits(deviceIsFirm, withPlacement({ fixing: 'loose', firm: true }))).toEqual(['device block']);
    expect(hits(clearOfAirBags, withPlacement({ inAirBagPath: true }))).toEqual(['device block']);
    expect(hits(nothingTiedToSteeringBrakeOrRestraintParts, withHarness({ tiedTo: ['pedal', 'bracket'] }))).toEqual([
      'pedal block',
    ]);
    expect(hits(spliceIsCovered, withConnection('ignition', { covered: 'not covered' }))).toEqual(['ignition block']);
  });
});

describe.each(handRules.map((rule) => [rule.id, rule] as const))('%s', (_id, rule) => {
  test('finds nothing in the sound sample job', () => {
    expect(hits(rule, unchanged)).toEqual([]);
  });

  test('says nothing on a wasted visit nor where its sections are missing', () => {
    const worst: RuleExample['change'] = (input) => {
      const changed =
        rule.examples
          .filter((example) => example.finds.length > 0)
          .at(-1)
          ?.change(input) ?? input;
      return { ...changed, identity: { ...changed.identity, visit: 'wasted visit', wastedBecause: 'no key' } };
    };
    expect(hits(rule, worst)).toEqual([]);
    const empty: RuleExample['change'] = (input) => ({ schema: input.schema, id: input.id, day: input.day });
    expect(hits(rule, empty)).toEqual([]);
  });
});
