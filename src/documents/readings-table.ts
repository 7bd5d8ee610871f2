import type { Evidence } from '../evidence/evidence.ts';
import { reversed } from '../evidence/surroundings.ts';
import type { Job } from '../records/job.ts';
import type { Reading } from '../records/reading.ts';
import { keyPositions } from '../records/wire-role.ts';
import type { Writing } from '../words/writing.ts';
import { colourOf } from './wire-words.ts';

const missing = '–';

/** The readings as they are printed: the supply first, then a row a wire; columns only for key positions that were read. */
export function readingsTable(job: Job, evidence: Evidence, writing: Writing) {
  const { sentences } = writing;
  const speech = writing.speech(job.vehicle);
  const points = job.probePoints ?? [];
  const all = points.flatMap((point) => point.readings);
  const keys = keyPositions.filter(
    (key) => evidence.supply[key] !== undefined || all.some((reading) => reading.key === key),
  );
  const hasLoaded = all.some((reading) => reading.loaded);
  const inTable = (reading: Reading) => reading.taken === 'before' && !reading.loaded;
  const waits = all
    .filter((reading) => reading.key === 'out' && inTable(reading))
    .map((reading) => reading.secondsWaited ?? 0);
  const waited = Math.min(...waits, 86_400);
  return {
    columns: keys.map((key) => ({ text: speech.key(key) })),
    hasSupply: Object.keys(evidence.supply).length > 0,
    supply: keys.map((key) => ({
      text: evidence.supply[key] === undefined ? missing : writing.millivolts(evidence.supply[key].millivolts),
    })),
    hasLoaded,
    rows: points.map((point) => {
      const colour = colourOf(point);
      return {
        name: point.name,
        colour: colour === null ? '' : sentences.colour(colour),
        hasLoaded,
        cells: keys.map((key) => {
          const reading = point.readings.find((each) => each.key === key && inTable(each));
          return {
            text: reading === undefined ? missing : `${reversed(reading) ? '*' : ''}${writing.volts(reading.volts)}`,
          };
        }),
        loaded:
          point.readings
            .filter((each) => each.loaded)
            .map((each) => loadedText(each, writing))
            .join(', ') || missing,
      };
    }),
    reversedRead: all.some(reversed),
    hasWait: waits.length > 0 && waited >= 60,
    wait: sentences.keyOutWait(writing.whole(Math.floor(waited / 60))),
    widths: ['4.6', ...keys.map(() => '1.7'), ...(hasLoaded ? ['3'] : [])].join(' '),
  };
}

function loadedText(reading: Reading, writing: Writing): string {
  const volts = writing.volts(reading.volts);
  return reading.loadMilliamps === undefined
    ? volts
    : writing.sentences.loadedAt(volts, writing.whole(reading.loadMilliamps));
}
