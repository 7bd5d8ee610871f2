import type { Job } from '../records/job.ts';
import type { ProbePoint } from '../records/probe-point.ts';
import { type Reading, reading as readingRecord, supplyReading } from '../records/reading.ts';
import type { KeyPosition } from '../records/wire-role.ts';
import { wireRoles } from '../records/wire-role.ts';
import { terminalSpeech } from '../words/terminal-speech.ts';
import { gaugeOf, gaugeOrNothing, pairOf } from './answers.ts';
import { isFitted, isWired } from './kinds-of-visit.ts';
import type { Around, Ask, Question } from './question.ts';
import { parseReadingLine, readingForm, type TypedReading } from './reading-line.ts';
import { writeReadings } from './write-readings.ts';

const usesDecimalComma = (around: Around) => new Intl.NumberFormat(around.book.locale).format(1.5).includes(',');

const positionsOf = (job: Job): KeyPosition[] => [...new Set((job.supply ?? []).map((each) => each.key))];

/** The meter in use: asked only when the book holds several. */
async function meterOf(ask: Ask, around: Around): Promise<{ meter?: string }> {
  const meters = around.book.meters;
  if (meters.length < 2) return {};
  const chosen = await ask.choose(
    'Meter',
    meters.map(({ id, name }) => ({ value: id, name })),
    meters[0]?.id ?? '',
  );
  return { meter: chosen };
}

/** Whether wires are measured at all: a fit always, a service call when it says so. */
const wired: Question = {
  id: 'wired',
  applies: (job) => job.identity.visit === 'service call',
  ask: async (job, ask) =>
    (await ask.confirm('Were wires measured or joined on this visit?', false)) ? { ...job, probePoints: [] } : job,
};

/** The supply's own volts; their key positions become the columns of the readings. */
const supply: Question = {
  id: 'supply',
  applies: isWired,
  ask: async (job, ask, around) => {
    around.tell(
      '  Caution: a probe referenced to a live wire is live. Never probe, cut or tap yellow-sleeved restraint wiring.',
    );
    const meter = await meterOf(ask, around);
    const text = await ask.text(
      'Supply at the battery ("out 12.6, accessory 12.5, on 12.4, crank 10.4, running 14.1")',
      '',
      (typed) => {
        const parsed = typed === '' ? [] : parseReadingLine(typed, [], usesDecimalComma(around));
        return typeof parsed === 'string' ? parsed : null;
      },
    );
    const parsed = text === '' ? [] : parseReadingLine(text, [], usesDecimalComma(around));
    const readings = typeof parsed === 'string' ? [] : parsed;
    return {
      ...job,
      supply: readings.map(({ key, volts, steady }) =>
        supplyReading.parse({ key, volts, ...(steady ? {} : { steady }), ...meter }),
      ),
    };
  },
};

/** A typed reading as a record. */
export function recordReading(
  typed: TypedReading,
  job: Job,
  constant: string | undefined,
  taken: 'before' | 'after',
): Reading {
  const meter = job.supply?.find((each) => each.meter !== undefined)?.meter;
  return readingRecord.parse({
    key: typed.key,
    volts: typed.volts,
    ...(typed.secondsWaited === null ? {} : { secondsWaited: typed.secondsWaited }),
    ...(typed.loaded ? { loaded: true } : {}),
    ...(typed.loadMilliamps === null ? {} : { loadMilliamps: typed.loadMilliamps }),
    ...(typed.steady ? {} : { steady: false }),
    ...(typed.lights === undefined ? {} : { lights: typed.lights }),
    ...(typed.isolator === undefined ? {} : { isolator: typed.isolator }),
    ...(taken === 'after' ? { taken } : {}),
    ...(meter === undefined ? {} : { meter }),
    ...(typed.toNegative ? { reference: 'battery negative' } : {}),
    ...(typed.reversed
      ? constant === undefined
        ? { reference: 'battery positive' }
        : { reference: 'probe point', referencePoint: constant }
      : {}),
  });
}

const specials = ['yellow sleeve', 'orange sleeve', 'one of a twisted pair'] as const;

async function describeWire(index: number, colour: string, job: Job, ask: Ask): Promise<ProbePoint> {
  const [main, stripe] = pairOf(colour);
  const taken = (job.probePoints ?? []).map((point) => point.name);
  const name = await ask.text(`Wire ${index + 1}: its name on the sheet`, `P${index + 1}`, (text) =>
    !/^[A-Za-z0-9][A-Za-z0-9-]{0,15}$/.test(text)
      ? 'Type a short name of letters and digits, such as P1.'
      : taken.includes(text)
        ? `${text} is taken.`
        : null,
  );
  const [connector, pin] = pairOf(await ask.text('Connector or place / pin', ''));
  const gauge = gaugeOf(await ask.text('Gauge (18, or 0.75 mm2; empty when not known)', '', gaugeOrNothing));
  const special = await ask.tick('Anything special about the wire?', specials, []);
  const side = job.vehicle.batteryIsolator
    ? await ask.choose('Which side of the battery isolator?', ['not known', 'battery', 'switched'], 'not known')
    : 'not known';
  return {
    name,
    colour: main,
    ...(stripe === '' ? {} : { stripe }),
    ...(connector === '' ? {} : { connector }),
    ...(pin === '' ? {} : { pin }),
    ...(gauge === null ? {} : { gauge }),
    sleeve: special.includes('yellow sleeve') ? 'yellow' : special.includes('orange sleeve') ? 'orange' : 'none',
    twisted: special.includes('one of a twisted pair'),
    ...(side === 'not known' ? {} : { isolatorSide: side }),
    readings: [],
  };
}

/** One wire: what it looks like, what it reads, what that proves, and the installer's verdict. */
function wireQuestion(index: number): Question {
  return {
    id: `wire-${index + 1}`,
    applies: (job) => isWired(job) && (job.probePoints ?? []).length >= index,
    ask: async (job, ask, around) => {
      if (index === 0) for (const hint of around.hints(job)) around.tell(`  earlier: ${hint}`);
      const colour = await ask.text(`Wire ${index + 1}: colour / stripe (empty when no more)`, '');
      if (colour === '') return { ...job, probePoints: job.probePoints ?? [] };
      const point = await describeWire(index, colour, job, ask);
      const readings = await readWire(job, point, ask, around);
      const withReadings = withPoint(job, { ...point, readings });
      const concluded = around.evidenceOf(withReadings).wires.at(-1)?.conclusion;
      const verdict = await ask.choose(
        `Your verdict on ${point.name}`,
        wireRoles,
        concluded?.kind === 'concluded' ? concluded.role : 'unknown',
      );
      return withPoint(job, { ...point, readings, verdict });
    },
  };
}

const withPoint = (job: Job, point: ProbePoint): Job => ({ ...job, probePoints: [...(job.probePoints ?? []), point] });

async function readWire(job: Job, point: ProbePoint, ask: Ask, around: Around): Promise<Reading[]> {
  const positions = positionsOf(job);
  const constant = around
    .evidenceOf(job)
    .wires.find((wire) => wire.conclusion.kind === 'concluded' && wire.conclusion.role === 'constant')?.point;
  const parse = (text: string) => parseReadingLine(text, positions, usesDecimalComma(around));
  const check = (text: string) => {
    const parsed = text === '' ? [] : parse(text);
    return typeof parsed === 'string' ? parsed : null;
  };
  const record = (text: string) => {
    const parsed = text === '' ? [] : parse(text);
    return typeof parsed === 'string' ? [] : parsed.map((each) => recordReading(each, job, constant, 'before'));
  };
  const columns =
    positions.length === 0 ? 'each with its key position' : `${positions.join(', ')}; "-" where not taken`;
  let readings = record(await ask.text(`Volts of ${point.name}: ${columns} (${readingForm})`, '', check));
  for (;;) {
    const tried = withPoint(job, { ...point, readings });
    const wire = around.evidenceOf(tried).wires.at(-1);
    for (const line of writeReadings(tried)) around.tell(`  ${line}`);
    if (wire === undefined) return readings;
    const speech = terminalSpeech(job.vehicle);
    around.tell(`  ${speech.wire(wire)}`);
    for (const trap of wire.traps) around.tell(`  mind: ${speech.trap(trap)}`);
    if (wire.conclusion.kind === 'concluded' || wire.conclusion.wants === null) return readings;
    around.tell(`  next: ${speech.wanted(wire.conclusion.wants)}`);
    const more = await ask.text('That reading (empty to leave it open)', '', check);
    if (more === '') return readings;
    readings = [...readings, ...record(more)];
  }
}

/** Readings again with the device working, one line a wire it is joined to. */
const readingsAfter: Question = {
  id: 'readings-after',
  applies: (job) => isWired(job) && (job.connections ?? []).some((made) => made.point !== undefined),
  ask: async (job, ask, around) => {
    const joined = new Set((job.connections ?? []).map((made) => made.point));
    const constant = job.connections?.find((made) => made.lead === 'supply')?.point;
    let next = job;
    for (const point of (job.probePoints ?? []).filter((each) => joined.has(each.name))) {
      const check = (text: string) => {
        const parsed = text === '' ? [] : parseReadingLine(text, [], usesDecimalComma(around));
        return typeof parsed === 'string' ? parsed : null;
      };
      const text = await ask.text(
        `${point.name} with the device working ("running 14.0 85mA"; a ground "running 0.02 85mA to negative")`,
        '',
        check,
      );
      const parsed = text === '' ? [] : parseReadingLine(text, [], usesDecimalComma(around));
      if (typeof parsed === 'string') continue;
      const added = parsed.map((each) => recordReading({ ...each, loaded: true }, job, constant, 'after'));
      next = {
        ...next,
        probePoints: (next.probePoints ?? []).map((each) =>
          each.name === point.name ? { ...each, readings: [...each.readings, ...added] } : each,
        ),
      };
    }
    return next;
  },
};

/** Find the wires: the supply, then wire by wire until one is left empty. */
export const wireQuestions: readonly Question[] = [
  wired,
  supply,
  ...Array.from({ length: 16 }, (_, index) => wireQuestion(index)),
];

/** Prove: the joined wires again, under load. */
export const loadedQuestions: readonly Question[] = [readingsAfter];

/** True when a device goes in or wires are joined. */
export const joinsWires = (job: Job): boolean => isFitted(job) || (isWired(job) && (job.probePoints ?? []).length > 0);
