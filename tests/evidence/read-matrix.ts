import { readFileSync } from 'node:fs';
import type { Evidence } from '../../src/evidence/evidence.ts';
import { type Job, type JobInput, job as jobRecord } from '../../src/records/job.ts';
import { keyPositions } from '../../src/records/wire-role.ts';

type PointInput = NonNullable<JobInput['probePoints']>[number];
type ReadingInput = NonNullable<PointInput['readings']>[number];
type SupplyInput = NonNullable<JobInput['supply']>[number];

/** One line of a matrix file: what was read, and what a fitter says of it. The grammar stands on top of matrices.txt. */
export type MatrixLine = {
  readonly file: string;
  readonly number: number;
  readonly text: string;
  readonly job: JobInput;
  readonly concluded: readonly string[];
  readonly traps: readonly string[];
};

const keyOf = (word: string) => {
  const found = keyPositions.filter((key) => key.startsWith(word));
  const key = found.find((each) => each === word) ?? (found.length === 1 ? found[0] : undefined);
  if (key === undefined) throw new Error(`"${word}" is no key position`);
  return key;
};

const cells = (text: string, by: string) =>
  text
    .split(by)
    .map((cell) => cell.trim())
    .filter((cell) => cell !== '');

function readingOf(text: string): ReadingInput {
  const match = /^([a-z]+) (-?\d+(?:\.\d+)?)(?:@(\d+))?(.*)$/.exec(text);
  if (match === null) throw new Error(`"${text}" is no reading`);
  const words = cells(match[4] ?? '', ' ');
  const after = (word: string) => words[words.indexOf(word) + 1];
  const has = (word: string) => words.includes(word);
  const known = /^(loaded|\d+mA|reversed|against|lamps|open|closed|wandering|after|[A-Z]+\d+)$/;
  const strange = words.find((word) => !known.test(word));
  if (strange !== undefined) throw new Error(`"${strange}" is not understood in "${text}"`);
  const current = words.find((word) => word.endsWith('mA'));
  return {
    key: keyOf(match[1] ?? ''),
    volts: Number(match[2]),
    reference: has('reversed')
      ? 'battery positive'
      : has('against')
        ? 'probe point'
        : has('loaded')
          ? 'battery negative'
          : 'chassis',
    ...(has('against') ? { referencePoint: after('against') } : {}),
    ...(match[3] === undefined ? {} : { secondsWaited: Number(match[3]) }),
    ...(has('loaded') ? { loaded: true } : {}),
    ...(current === undefined ? {} : { loadMilliamps: Number(current.replace('mA', '')) }),
    ...(has('lamps') ? { lights: 'on' as const } : {}),
    ...(has('open') ? { isolator: 'open' as const } : has('closed') ? { isolator: 'closed' as const } : {}),
    ...(has('wandering') ? { steady: false } : {}),
    ...(has('after') ? { taken: 'after' as const } : {}),
  };
}

function pointOf(text: string, place: number): PointInput {
  const match = /^(?:([A-Z]+\d+)\s*)?(?:\[([^\]]*)\]\s*)?(?::\s*)?(.*)$/.exec(text);
  const point: PointInput = {
    name: match?.[1] ?? `P${place + 1}`,
    readings: cells(match?.[3] ?? '', ',').map(readingOf),
  };
  return Object.assign(point, ...cells(match?.[2] ?? '', ',').map(remarkOf));
}

function remarkOf(text: string): Partial<PointInput> {
  const [first = '', second = ''] = text.split(' ');
  if (text === 'twisted') return { twisted: true };
  if (first === 'pin') return { connector: second.split('/')[0], pin: second.split('/')[1] };
  if (first === 'fuse') return { vehicleFuseAmperes: Number(second) };
  if (first === 'side') return { isolatorSide: second as 'battery' };
  if (first === 'sleeve') return { sleeve: second as 'yellow' };
  if (first === 'called') return { verdict: second as 'constant' };
  throw new Error(`"${text}" is no remark on a wire`);
}

function vehicleOf(text: string): JobInput['vehicle'] {
  const words = cells(text, ',');
  const built = words.find((word) => /^built \d{4}$/.test(word));
  const drive = words.find((word) => word === 'hybrid' || word === 'electric');
  return {
    ...(words.includes('24 V') ? { systemVolts: 24 as const } : {}),
    ...(words.includes('12 V') ? { systemVolts: 12 as const } : {}),
    ...(drive === undefined ? {} : { drive: drive as 'hybrid' }),
    ...(words.includes('button') ? { start: 'button' as const } : {}),
    ...(words.includes('isolator') ? { batteryIsolator: true } : {}),
    ...(words.includes('trailer') ? { class: 'trailer' as const } : {}),
    ...(built === undefined ? {} : { year: Number(built.slice(6)) }),
  };
}

/** All lines of a matrix file beside this one. */
export function readMatrix(file: string): readonly MatrixLine[] {
  let supply: readonly SupplyInput[] = [];
  let vehicle: JobInput['vehicle'] = {};
  const lines: MatrixLine[] = [];
  const rows = readFileSync(new URL(file, import.meta.url), 'utf8').split('\n');
  for (const [place, row] of rows.entries()) {
    if (row.trim() === '' || row.startsWith('#')) continue;
    if (row.startsWith('supply:')) {
      supply = cells(row.slice(7), ',').map((each) => {
        const { key, volts, steady } = readingOf(each);
        return { key, volts, ...(steady === undefined ? {} : { steady }) };
      });
      continue;
    }
    if (row.startsWith('vehicle:')) {
      vehicle = vehicleOf(row.slice(8));
      continue;
    }
    const [wires = '', concluded = '', traps = ''] = row.split('|').map((cell) => cell.trim());
    lines.push({
      file,
      number: place + 1,
      text: row,
      job: {
        schema: 'keyout-job-1',
        id: '2026-01-01-AAAA',
        day: '2026-01-01',
        vehicle,
        supply: [...supply],
        probePoints: cells(wires, ';').map(pointOf),
      },
      concluded: cells(concluded, ',').sort(),
      traps: cells(traps === 'none' ? '' : traps, ',').sort(),
    });
  }
  return lines;
}

/** The job of a line, every volt multiplied: 1 as read, 2 on a 24 V system. */
export function jobOfLine(line: MatrixLine, factor = 1): Job {
  const times = (volts: number) => Math.round(volts * factor * 1000) / 1000;
  return jobRecord.parse({
    ...line.job,
    vehicle: { ...line.job.vehicle, ...(factor === 2 ? { systemVolts: 24 } : {}) },
    supply: (line.job.supply ?? []).map((each) => ({ ...each, volts: times(each.volts) })),
    probePoints: (line.job.probePoints ?? []).map((point) => ({
      ...point,
      readings: (point.readings ?? []).map((each) => ({ ...each, volts: times(each.volts) })),
    })),
  });
}

/** What the program says of a job, in the words of the matrix files. */
export function saidOf(evidence: Evidence, withRemaining: boolean) {
  const several = evidence.wires.length > 1;
  const named = (point: string, word: string) => (several ? `${point === '' ? 'job' : point} ${word}` : word);
  const concluded = evidence.wires.map(({ point, conclusion }) => {
    if (conclusion.kind === 'concluded') return named(point, conclusion.role);
    return named(point, withRemaining ? `open: ${[...conclusion.remaining].sort().join(' ')}` : 'open');
  });
  const traps = [...evidence.wires.flatMap((wire) => wire.traps), ...evidence.traps];
  return {
    concluded: concluded.sort(),
    traps: [...new Set(traps.map((trap) => named(trap.point, trap.kind)))].sort(),
  };
}
