import type { Job } from '../records/job.ts';
import { zones } from '../records/placement.ts';
import { celsiusOf, lengthOf, lengthOrNothing, numberOf, numberOrNothing, something, whole } from './answers.ts';
import { isFitted } from './kinds-of-visit.ts';
import type { Around, Ask, Question } from './question.ts';

type Placement = NonNullable<Job['placement']>;
const fixings = ['screws', 'cable ties', 'adhesive pad', 'bracket', 'hook-and-loop', 'loose'] as const;
const aboves = ['open sky', 'glass', 'plastic', 'fabric', 'wood', 'metal', 'heated or coated glass'] as const;
const orientations = ['label up', 'label down', 'on edge', 'any'] as const;
const blockable = ['vent', 'view', 'control', 'seat travel', 'hatch'] as const;
const byHand = 'a hand reaches it by chance';
const wetPlace = 'water reaches it';

async function lengthAsked(message: string, ask: Ask, around: Around): Promise<number | null> {
  const unit = around.book.units.length;
  return lengthOf(await ask.text(`${message}, ${unit}`, '', lengthOrNothing(unit)), unit);
}

async function askWindscreen(zone: string, ask: Ask, around: Around): Promise<Partial<Placement>> {
  if (zone !== 'windscreen') return {};
  const inSweptArea = await ask.decide('Do the wipers pass over the place?');
  const glass = await lengthAsked('Its lower edge below the upper edge of the glass', ask, around);
  const below = await lengthAsked('Its lower edge below the top of the wiped area', ask, around);
  const above = await lengthAsked('Its upper edge above the bottom of the wiped area', ask, around);
  return {
    inSweptArea,
    ...(glass === null ? {} : { belowGlassTopMillimetres: glass }),
    ...(below === null ? {} : { belowSweptTopMillimetres: below }),
    ...(above === null ? {} : { aboveSweptBottomMillimetres: above }),
    inSightLine: await ask.decide('In the driver’s sight line to road, signs and signals?'),
  };
}

async function askDistances(ask: Ask, around: Around): Promise<Partial<Placement>> {
  const airBag = await lengthAsked('Distance to the nearest air bag cover', ask, around);
  const heat = await lengthAsked('Distance to the nearest hot part or heater outlet', ask, around);
  const hottest = celsiusOf(
    await ask.text('Hottest it gets there, °C (or write 130 F)', '', (text) =>
      text === '' || celsiusOf(text) !== null ? null : 'Type degrees such as 55 or 131 F, or nothing.',
    ),
  );
  const coldest = celsiusOf(
    await ask.text('Coldest it gets there, °C', '', (text) =>
      text === '' || celsiusOf(text) !== null ? null : 'Type degrees such as -25 or -13 F, or nothing.',
    ),
  );
  const person = await lengthAsked('Distance to the nearest seated person', ask, around);
  return {
    ...(airBag === null ? {} : { airBagMillimetres: airBag }),
    ...(heat === null ? {} : { heatMillimetres: heat }),
    ...(hottest === null ? {} : { expectedCelsiusMax: hottest }),
    ...(coldest === null ? {} : { expectedCelsiusMin: coldest }),
    ...(person === null ? {} : { personMillimetres: person }),
  };
}

// what the windscreen limits of 49 CFR 393.60(e) depend on
async function askCommerce(zone: string, job: Job, ask: Ask): Promise<Job['vehicle']> {
  if (zone !== 'windscreen') return job.vehicle;
  const commercial = await ask.confirm('Is the vehicle used in commerce on public roads?', true);
  const weight = await ask.text('Highest permitted weight on its plate, kg (or write lb)', '', (text) =>
    /^(\d{1,6}\s*(kg|lb)?)?$/i.test(text) ? null : 'Type a weight such as 3500 or 10001 lb, or nothing.',
  );
  if (weight === '') return { ...job.vehicle, commercial };
  const pounds = /lb/i.test(weight);
  // rounded down: 49 CFR 390.5 puts 4536 kg beside 10,001 lb, and 10,000 lb, which many plates carry, must stay below
  const grossWeightKilograms = Math.floor(Number.parseInt(weight, 10) * (pounds ? 0.45359237 : 1));
  return { ...job.vehicle, commercial, grossWeightKilograms };
}

/** Place and secure: where the device sits, how it is held, and what it must keep clear of. */
export const placementQuestion: Question = {
  id: 'placement',
  applies: isFitted,
  ask: async (job, ask, around) => {
    around.tell(
      '  Caution: nothing in an air bag’s way, nothing in the driver’s view, nothing near steering or pedals.',
    );
    const zone = await ask.choose('Where does it sit?', zones, 'dash left');
    const surface = await ask.text('On what surface?', '', something);
    const fixing = await ask.choose('Held by', fixings, 'cable ties');
    const points = await ask.text('At how many points?', '2', whole);
    const orientation = await ask.choose('It lies', orientations, 'label up');
    const above = await ask.choose('What is above it?', aboves, 'plastic');
    const good = await ask.tick(
      'Mark what is so of the device',
      ['firm when pulled by hand', 'reachable with tools'],
      [],
    );
    const inAirBagPath = await ask.decide('In the way of an air bag?');
    const inHeadStrikeArea = await ask.decide('Where a head or knee may strike?');
    const bad = await ask.tick(
      'Anything of this?',
      [...blockable.map((each) => `blocks a ${each}`), byHand, wetPlace],
      [],
    );
    const distances = await askDistances(ask, around);
    const windscreen = await askWindscreen(zone, ask, around);
    const vehicle = await askCommerce(zone, job, ask);
    const placement: Placement = {
      zone,
      surface,
      fixing,
      fixingPoints: Number(points),
      firm: good.includes('firm when pulled by hand'),
      orientation,
      above,
      inAirBagPath,
      inHeadStrikeArea,
      wet: bad.includes(wetPlace),
      blocks: blockable.filter((each) => bad.includes(`blocks a ${each}`)),
      reachableWithTools: good.includes('reachable with tools'),
      reachableByHand: bad.includes(byHand),
      ...distances,
      ...windscreen,
    };
    return { ...job, vehicle, placement };
  },
};

const touchable = ['sharp edge', 'hot part', 'moving part', 'fuel line'] as const;
const ties = [
  'vehicle harness',
  'bracket',
  'steering',
  'pedal',
  'brake line',
  'restraint wiring',
  'high-voltage cable',
  'fuel line',
] as const;

/** The spare harness: loomed, tied, slack, and what it touches. */
export const harnessQuestion: Question = {
  id: 'harness',
  applies: isFitted,
  ask: async (job, ask, around) => {
    const unit = around.book.units.length;
    const good = await ask.tick('Mark what is so of the harness', ['loomed', 'tied'], []);
    const interval = good.includes('tied') ? await lengthAsked('Tied every', ask, around) : null;
    const tiedTo = await ask.tick('Tied to', ties, good.includes('tied') ? ['vehicle harness'] : []);
    const slack = await ask.choose('Its slack is', ['right', 'tight', 'loose'], 'right');
    const touches = await ask.tick('It touches, if anything', touchable, []);
    const bend = await ask.text('Tightest bend, in times its own thickness', '', numberOrNothing);
    const profile = around.devices.find((each) => each.id === job.device?.profile);
    const own = profile?.leadLengthMillimetres;
    const length = lengthOf(
      await ask.text(`Its length, ${unit}`, own === undefined ? '' : `${own} mm`, lengthOrNothing(unit)),
      unit,
    );
    return {
      ...job,
      harness: {
        loomed: good.includes('loomed'),
        tied: good.includes('tied'),
        ...(interval === null ? {} : { tieIntervalMillimetres: interval }),
        slack,
        touches: touchable.filter((each) => touches.includes(each)),
        tiedTo: ties.filter((each) => tiedTo.includes(each)),
        ...(bend === '' ? {} : { bendRadiusTimesDiameter: numberOf(bend) }),
        ...(length === null ? {} : { lengthMillimetres: length }),
      },
    };
  },
};
