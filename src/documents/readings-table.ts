import type { Evidence } from '../evidence/evidence.ts';
import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import type { Job } from '../records/job.ts';
import { type KeyPosition, keyPositions } from '../records/wire-role.ts';
import { volts, wireColour } from './write-facts.ts';

const heads: Readonly<Record<KeyPosition, string>> = {
  out: 'key out',
  off: 'off',
  accessory: 'accessory',
  on: 'on',
  crank: 'crank',
  running: 'running',
};

/** The readings as they are printed: the supply first, then a row a wire; columns only for key positions that were read. */
export function readingsTable(job: Job, evidence: Evidence) {
  const points = job.probePoints ?? [];
  const electric = job.vehicle.drive !== undefined && job.vehicle.drive !== 'combustion';
  const asleep = job.vehicle.start === 'button';
  const keys = keyPositions.filter(
    (key) =>
      evidence.supply[key] !== undefined ||
      points.some((point) => point.readings.some((reading) => reading.key === key)),
  );
  const columns = keys.map((key) => ({
    text: electric && key === 'running' ? 'ready' : asleep && key === 'out' ? 'asleep' : heads[key],
  }));
  const supply = keys.map((key) => ({
    text: evidence.supply[key] === undefined ? '–' : writeVolts(evidence.supply[key].millivolts),
  }));
  const rows = points.map((point) => ({
    name: `${point.name}  ${wireColour(point)}`,
    cells: keys.map((key) => {
      const reading = point.readings.find((each) => each.key === key && each.taken === 'before' && !each.loaded);
      return {
        text:
          reading === undefined
            ? '–'
            : `${volts(reading.volts)}${reading.reference === 'probe point' || reading.reference === 'battery positive' ? '*' : ''}`,
      };
    }),
    loaded:
      point.readings
        .filter((each) => each.loaded)
        .map((each) => `${volts(each.volts)}${each.loadMilliamps === undefined ? '' : ` at ${each.loadMilliamps} mA`}`)
        .join(', ') || '–',
  }));
  const reversedRead = points.some((point) =>
    point.readings.some((reading) => reading.reference === 'probe point' || reading.reference === 'battery positive'),
  );
  const waits = points.flatMap((point) =>
    point.readings.filter((reading) => reading.key === 'out').map((reading) => reading.secondsWaited ?? 0),
  );
  return {
    columns,
    supply,
    rows,
    reversedRead,
    hasWait: waits.length > 0,
    waited: String(Math.floor(Math.min(...waits, 86_400) / 60)),
    widths: ['4', ...keys.map(() => '1.6'), '3'].join(' '),
    meterNote: evidence.systemVolts === null ? 'unknown' : String(evidence.systemVolts),
    span: String(keys.length),
    first: String(millivoltsFromVolts(0)),
  };
}
