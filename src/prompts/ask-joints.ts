import { type Connection, spliceMethods } from '../records/connection.ts';
import type { Job } from '../records/job.ts';
import { gaugeOf, gaugeOrNothing, lengthOf, lengthOrNothing, numberOf, numberOrNothing, something } from './answers.ts';
import { joinsWires } from './ask-wires.ts';
import type { Around, Ask, Question } from './question.ts';

type Lead = Connection['lead'];
const covers = ['tape', 'heat-shrink', 'sealed sleeve', 'closed housing', 'not covered'] as const;
const ownGround = 'its own ground point, no probe point';
const clean = 'stripped clean, no strand nicked';
const tied = 'tied';
const tug = 'held a light tug';
const fuseTied = 'fuse taped and tied';

async function askFuse(lead: Lead, job: Job, ask: Ask, around: Around) {
  if (lead === 'ground') return null;
  const profile = around.devices.find((each) => each.id === job.device?.profile);
  const usual = profile?.fusedLeads.includes(lead) ? String(profile.fuseAmperes) : '';
  const rating = await ask.text('Fuse, amperes (0 for none)', usual, numberOrNothing);
  if (rating === '' || numberOf(rating) === 0) return null;
  const unit = around.book.units.length;
  const distance = await ask.text(
    `Fuse from the joint, along the lead, ${unit}`,
    '',
    (text) => something(text) ?? lengthOrNothing(unit)(text),
  );
  return { ratingAmperes: numberOf(rating), distanceMillimetres: lengthOf(distance, unit) ?? 0 };
}

async function askStrip(ticked: readonly string[], ask: Ask): Promise<Partial<Connection>> {
  if (ticked.includes(clean)) return { stripped: 'clean' };
  const stripped = await ask.choose(
    'The strip then',
    ['strands nicked', 'strands cut', 'not looked at'],
    'not looked at',
  );
  if (stripped === 'not looked at') return {};
  const count = await ask.text('How many strands?', '', numberOrNothing);
  return {
    stripped,
    ...(count === '' ? {} : { nickedStrands: Math.round(numberOf(count)) }),
  };
}

async function askLead(ask: Ask, unit: 'in' | 'mm'): Promise<Partial<Connection>> {
  const other = await ask.text(
    'Lead used, when not the device’s own: gauge (18, or 0.75 mm2; empty for its own)',
    '',
    gaugeOrNothing,
  );
  const gauge = gaugeOf(other);
  if (gauge === null) return {};
  const length = lengthOf(await ask.text(`Its length, ${unit}`, '', lengthOrNothing(unit)), unit);
  return { gauge, ...(length === null ? {} : { lengthMillimetres: length }) };
}

/** One lead of the device joined to the vehicle. */
function joint(lead: Lead): Question {
  return {
    id: `joint-${lead}`,
    applies: joinsWires,
    ask: async (job, ask, around) => {
      const unit = around.book.units.length;
      const names = (job.probePoints ?? []).map((point) => ({
        value: point.name,
        name: [point.name, point.colour, point.stripe, point.verdict].filter((word) => word !== undefined).join(' '),
      }));
      const wanted = { supply: 'constant', ignition: 'ignition', ground: 'ground' }[lead];
      const usual = job.probePoints?.find((point) => point.verdict === wanted)?.name ?? names[0]?.value ?? ownGround;
      const choices = lead === 'ground' ? [...names, ownGround] : names;
      if (choices.length === 0) return job;
      const point = await ask.choose(`The ${lead} lead is joined to`, choices, usual);
      const usualMethod = lead === 'ground' ? 'ring terminal' : 'wrapped tap';
      const method = await ask.choose('Joined by', spliceMethods, usualMethod);
      const covered = await ask.choose('Covered by', covers, lead === 'ground' ? 'closed housing' : 'tape');
      const tape =
        covered === 'tape'
          ? await ask.text(
              `Tape along the joint, ${unit}`,
              '',
              (text) => something(text) ?? lengthOrNothing(unit)(text),
            )
          : '';
      const fuse = await askFuse(lead, job, ask, around);
      const feed =
        lead === 'ground'
          ? ''
          : await ask.text('Vehicle fuse that feeds the wire, amperes (empty: not known)', '', numberOrNothing);
      const items = [clean, tied, tug, ...(fuse === null ? [] : [fuseTied])];
      const ticked = await ask.tick('Mark what is so of the joint', items, []);
      const strip = await askStrip(ticked, ask);
      const wet = await ask.confirm('Does water, salt or washing reach it?', false);
      const near = await ask.text(
        `Nearest other joint along the bundle, ${unit} (empty: none near)`,
        '',
        lengthOrNothing(unit),
      );
      const other = await askLead(ask, unit);
      const made: Connection = {
        lead,
        ...(point === ownGround ? {} : { point }),
        method,
        ...strip,
        covered,
        ...(tape === '' ? {} : { tapeMillimetres: lengthOf(tape, unit) ?? 0 }),
        tied: ticked.includes(tied),
        tugHeld: ticked.includes(tug),
        wetPlace: wet,
        ...(near === '' ? {} : { nextJointMillimetres: lengthOf(near, unit) ?? 0 }),
        ...(fuse === null ? {} : { fuse: { ...fuse, tapedAndTied: ticked.includes(fuseTied) } }),
        ...other,
      };
      const fed =
        feed === '' || numberOf(feed) === 0
          ? job
          : {
              ...job,
              probePoints: (job.probePoints ?? []).map((each) =>
                each.name === point ? { ...each, vehicleFuseAmperes: numberOf(feed) } : each,
              ),
            };
      return { ...fed, connections: [...(job.connections ?? []).filter((each) => each.lead !== lead), made] };
    },
  };
}

const kinds = [
  'factory ground stud',
  'chassis bolt',
  'existing ground wire',
  'battery negative',
  'drilled screw',
] as const;

const groundPoint: Question = {
  id: 'ground-point',
  applies: (job) => joinsWires(job) && (job.connections ?? []).some((made) => made.lead === 'ground'),
  ask: async (job, ask) => {
    const kind = await ask.choose('The ground point is a', kinds, 'factory ground stud');
    const where = await ask.text('Where is it?', '', something);
    const ticked = await ask.tick(
      'Mark what is so of the ground point',
      ['bare metal under the terminal', 'shakeproof'],
      [],
    );
    return {
      ...job,
      ground: {
        kind,
        where,
        bareMetal: ticked.includes('bare metal under the terminal'),
        shakeproof: ticked.includes('shakeproof'),
      },
    };
  },
};

/** The ground under load: its drop to the battery, with the current that flowed. */
export const groundDrop: Question = {
  id: 'ground-drop',
  applies: (job) => job.ground !== undefined,
  ask: async (job, ask, around) => {
    const drop = await ask.text(
      'Drop from the device’s ground lead to battery negative, device working, mV',
      '',
      (text) => (/^-?\d{0,5}$/.test(text) ? null : 'Type whole millivolts, or nothing.'),
    );
    if (drop === '' || job.ground === undefined) return job;
    const usual = around.devices.find((each) => each.id === job.device?.profile)?.awakeMilliamps;
    const current = await ask.text('With a current of, mA', String(usual ?? ''), numberOrNothing);
    return {
      ...job,
      ground: {
        ...job.ground,
        dropMillivolts: Number(drop),
        ...(current === '' ? {} : { testMilliamps: Math.round(numberOf(current)) }),
      },
    };
  },
};

/** Connect: lead by lead, then the ground point. */
export const jointQuestions: readonly Question[] = [joint('supply'), joint('ignition'), joint('ground'), groundPoint];
