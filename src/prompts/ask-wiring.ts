import { spliceMethods } from '../records/connection.ts';
import type { Job } from '../records/job.ts';
import { type Reading, reading as readingRecord, supplyReading } from '../records/reading.ts';
import { wireRoles } from '../records/wire-role.ts';
import type { Question } from './question.ts';
import { parseReadingLine } from './reading-line.ts';
import { isFitted, isWorked } from './text-question.ts';

const readable = (text: string): string | null => {
  const parsed = text === '' ? [] : parseReadingLine(text);
  return typeof parsed === 'string' ? parsed : null;
};

function readingsFrom(text: string, constant: string | undefined): Reading[] {
  const parsed = parseReadingLine(text);
  if (typeof parsed === 'string') return [];
  return parsed.map((each) =>
    readingRecord.parse({
      key: each.key,
      volts: each.volts,
      ...(each.secondsWaited === null ? {} : { secondsWaited: each.secondsWaited }),
      ...(each.loaded ? { loaded: true, taken: 'after' } : {}),
      ...(each.reversed
        ? constant === undefined
          ? { reference: 'battery positive' }
          : { reference: 'probe point', referencePoint: constant }
        : {}),
    }),
  );
}

const panelForm = 'name / fastener / tool / how many out / how many back in';

function panelFrom(text: string) {
  const [name = '', fastener = '', tool = '', out = '', back = ''] = text.split('/').map((each) => each.trim());
  if (name === '' || fastener === '' || !/^\d+$/.test(out) || !/^\d*$/.test(back)) return null;
  return {
    name,
    fastener,
    ...(tool === '' ? {} : { tool }),
    out: Number(out),
    ...(back === '' ? {} : { in: Number(back) }),
  };
}

/** Panels, the supply's own volts, every wire with its verdict, and the three joints. */
export const wiringQuestions: readonly Question[] = [
  {
    id: 'panels',
    applies: isWorked,
    ask: async (job, ask) => {
      const text = await ask.text(`Panels opened (${panelForm}; ";" between panels)`, '', (each) =>
        each === '' || each.split(';').every((part) => panelFrom(part) !== null) ? null : `Type it as: ${panelForm}.`,
      );
      return {
        ...job,
        panels: text
          .split(';')
          .map(panelFrom)
          .filter((panel) => panel !== null),
      };
    },
  },
  {
    id: 'supply',
    applies: isFitted,
    ask: async (job, ask) => {
      const text = await ask.text(
        'Supply at the battery ("out 12.6, accessory 12.5, on 12.4, crank 10.4, running 14.1")',
        '',
        readable,
      );
      const parsed = text === '' ? [] : parseReadingLine(text);
      return {
        ...job,
        supply: typeof parsed === 'string' ? [] : parsed.map(({ key, volts }) => supplyReading.parse({ key, volts })),
      };
    },
  },
  ...Array.from({ length: 8 }, (_, place): Question => wireQuestion(place)),
  ...(['supply', 'ignition', 'ground'] as const).map(joint),
];

function wireQuestion(place: number): Question {
  return {
    id: `wire-${place + 1}`,
    applies: (job) => isFitted(job) && (place === 0 || (job.probePoints ?? []).length >= place),
    ask: async (job, ask, around) => {
      const colour = await ask.text(`Wire ${place + 1}: colour / stripe (empty when there are no more)`, '');
      if (colour === '') return job;
      const [main = '', stripe = ''] = colour.split('/').map((each) => each.trim());
      const [connector = '', pin = ''] = (await ask.text('Connector / pin', '')).split('/').map((each) => each.trim());
      const name = `P${place + 1}`;
      const constant = around
        .evidenceOf(job)
        .wires.find((wire) => wire.conclusion.kind === 'concluded' && wire.conclusion.role === 'constant')?.point;
      const add = (readings: Reading[]): Job => ({
        ...job,
        probePoints: [
          ...(job.probePoints ?? []),
          {
            name,
            colour: main,
            ...(stripe === '' ? {} : { stripe }),
            ...(connector === '' ? {} : { connector }),
            ...(pin === '' ? {} : { pin }),
            sleeve: 'none',
            twisted: false,
            readings,
          },
        ],
      });
      let readings = readingsFrom(
        await ask.text(`Readings of ${name} ("out 12.6@720, on 12.4"; add "loaded" or "reversed")`, '', readable),
        constant,
      );
      for (;;) {
        const wire = around.evidenceOf(add(readings)).wires.at(-1);
        if (wire === undefined) break;
        around.tell(`  ${wire.sentence}`);
        for (const trap of wire.traps) around.tell(`  mind: ${trap.sentence}`);
        if (wire.conclusion.kind === 'concluded' || wire.conclusion.wants === null) break;
        around.tell(`  next: ${wire.conclusion.wants.sentence}`);
        const more = await ask.text('That reading (empty to leave it open)', '', readable);
        if (more === '') break;
        readings = [...readings, ...readingsFrom(more, constant)];
      }
      const concluded = around.evidenceOf(add(readings)).wires.at(-1)?.conclusion;
      const verdict = (await ask.choose(
        `Your verdict on ${name}`,
        wireRoles,
        concluded?.kind === 'concluded' ? concluded.role : 'unknown',
      )) as (typeof wireRoles)[number];
      const added = add(readings);
      return {
        ...added,
        probePoints: (added.probePoints ?? []).map((point) => (point.name === name ? { ...point, verdict } : point)),
      };
    },
  };
}

function joint(lead: 'supply' | 'ignition' | 'ground'): Question {
  return {
    id: `joint-${lead}`,
    applies: (job) => isFitted(job) && (job.probePoints ?? []).length > 0,
    ask: async (job, ask, around) => {
      const names = (job.probePoints ?? []).map((point) => point.name);
      const wanted = { supply: 'constant', ignition: 'ignition', ground: 'ground' }[lead];
      const usual = job.probePoints?.find((point) => point.verdict === wanted)?.name ?? names[0] ?? '';
      const point = await ask.choose(`The ${lead} lead is joined to`, names, usual);
      const method = (await ask.choose(
        'Method',
        spliceMethods,
        lead === 'ground' ? 'ring terminal' : 'wrapped tap',
      )) as (typeof spliceMethods)[number];
      const covered = (await ask.choose(
        'Covered by',
        ['tape', 'heat-shrink', 'sealed sleeve', 'closed housing', 'not covered'],
        lead === 'ground' ? 'closed housing' : 'tape',
      )) as 'tape';
      const tape =
        covered === 'tape'
          ? Number(await ask.text('Tape, mm', '28', (text) => (/^\d+$/.test(text) ? null : 'Type whole millimetres.')))
          : null;
      const tied = await ask.confirm('Clean strip, tied, and held a tug?', true);
      const rating =
        lead === 'ground'
          ? ''
          : await ask.text(
              'Fuse, amperes (empty for none)',
              String(
                around.devices.find((each) => each.id === job.device?.profile)?.fuseAmperes ??
                  around.devices[0]?.fuseAmperes ??
                  '',
              ),
              (text) => (/^(\d+(\.\d+)?)?$/.test(text) ? null : 'Type amperes.'),
            );
      const distance =
        rating === ''
          ? 0
          : Number(
              await ask.text('Fuse from the joint, mm', '90', (text) =>
                /^\d+$/.test(text) ? null : 'Type whole millimetres.',
              ),
            );
      const made = {
        lead,
        point,
        method,
        ...(tied ? { stripped: 'clean' as const } : {}),
        covered,
        ...(tape === null ? {} : { tapeMillimetres: tape }),
        tied,
        tugHeld: tied,
        wetPlace: false,

        ...(rating === ''
          ? {}
          : { fuse: { ratingAmperes: Number(rating), distanceMillimetres: distance, tapedAndTied: tied } }),
      };
      return { ...job, connections: [...(job.connections ?? []).filter((each) => each.lead !== lead), made] };
    },
  };
}
