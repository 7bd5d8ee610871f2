import type { Evidence, TabledReadings } from '../evidence/evidence.ts';
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
  const waits = evidence.wires.flatMap(({ table }) => {
    const out = table.counts.get('out');
    return out === undefined ? [] : [out.secondsWaited ?? 0];
  });
  const waited = Math.min(...waits, 86_400);
  return {
    columns: keys.map((key) => ({ text: speech.key(key) })),
    hasSupply: Object.keys(evidence.supply).length > 0,
    supply: keys.map((key) => ({
      text: evidence.supply[key] === undefined ? missing : writing.millivolts(evidence.supply[key].millivolts),
    })),
    hasLoaded,
    rows: points.map((point, index) => {
      const colour = colourOf(point);
      const table = evidence.wires[index]?.table ?? noReadings;
      const notes = [
        ...(table.superseded.length === 0 ? [] : [sentences.superseded(speech.readings(table.superseded))]),
        ...(table.besides.length === 0 ? [] : [sentences.alsoRead(speech.readings(table.besides))]),
      ];
      return {
        name: point.name,
        colour: colour === null ? '' : sentences.colour(colour),
        hasLoaded,
        cells: keys.map((key) => {
          const reading = table.counts.get(key);
          if (reading === undefined) return { text: missing };
          return { text: `${reversed(reading) ? '*' : ''}${writing.volts(reading.volts)}` };
        }),
        loaded:
          point.readings
            .filter((each) => each.loaded)
            .map((each) => loadedText(each, writing))
            .join(', ') || missing,
        hasNote: notes.length > 0,
        note: notes.join(' '),
      };
    }),
    reversedRead: evidence.wires.some(({ table }) => [...table.counts.values()].some(reversed)),
    hasWait: waits.length > 0 && waited >= 60,
    wait: sentences.keyOutWait(writing.whole(Math.floor(waited / 60))),
    widths: ['4.6', ...keys.map(() => '1.7'), ...(hasLoaded ? ['3'] : [])].join(' '),
  };
}

const noReadings: TabledReadings = { counts: new Map(), superseded: [], besides: [] };

function loadedText(reading: Reading, writing: Writing): string {
  const volts = writing.volts(reading.volts);
  return reading.loadMilliamps === undefined
    ? volts
    : writing.sentences.loadedAt(volts, writing.whole(reading.loadMilliamps));
}
