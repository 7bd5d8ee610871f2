import type { Connection } from '../records/connection.ts';
import type { Job } from '../records/job.ts';
import { terminalNumbers } from '../records/wire-role.ts';
import type { Writing } from '../words/writing.ts';
import { roleOfLead } from './proven-as-joined.ts';
import { colourOf, wirePlace } from './wire-words.ts';
import { wrappedLabel } from './wrapped-label.ts';

// all of the figure's measures are millimetres from its upper left corner
const jointX = 62;
const fuseX = 81;
const lineHeight = 3.4;
const headHeight = 6;
const order = ['supply', 'ignition', 'ground'];
const millimetres = (value: number) => value.toFixed(1);

type Label = { readonly text: string; readonly y: string };

/** Lines of words above a height, the last one `gap` over it. */
const above = (lines: readonly string[], y: number, gap: number): readonly Label[] =>
  lines.map((text, index) => ({ text, y: millimetres(y - gap - (lines.length - 1 - index) * lineHeight) }));
/** Lines of words below a height. */
const below = (lines: readonly string[], y: number, gap: number): readonly Label[] =>
  lines.map((text, index) => ({ text, y: millimetres(y + gap + index * lineHeight) }));

function wordsOf(made: Connection, job: Job, writing: Writing) {
  const { sentences, terms } = writing;
  const point = job.probePoints?.find((one) => one.name === made.point);
  const colour = colourOf(point);
  return {
    wire: colour === null ? sentences.noColour : sentences.colour(colour),
    place: wirePlace(point, writing) || (made.lead === 'ground' ? (job.ground?.where ?? '') : ''),
    terminal: terminalNumbers[roleOfLead[made.lead]] ?? '',
    joint: terms.methods[made.method],
    lead: terms.leads[made.lead],
    fuse: made.fuse === undefined ? '' : sentences.amperes(writing.decimal(made.fuse.ratingAmperes)),
    fuseDistance: made.fuse === undefined ? '' : writing.length(made.fuse.distanceMillimetres),
    fuseInWords:
      made.fuse === undefined
        ? ''
        : sentences.fuseAt(writing.decimal(made.fuse.ratingAmperes), writing.length(made.fuse.distanceMillimetres)),
  };
}

function rowAt(made: Connection, top: number, job: Job, writing: Writing) {
  const words = wordsOf(made, job, writing);
  const wire = wrappedLabel(words.wire, 27);
  const place = wrappedLabel(words.place, 29);
  const joint = wrappedLabel(words.joint, 18);
  const y = top + Math.max(wire.length * lineHeight + 0.8, joint.length * lineHeight + 2.4);
  const bottom = y + Math.max(7.6, place.length * lineHeight + 1.6);
  const at = (offset: number) => millimetres(y + offset);
  return {
    bottom,
    words,
    row: {
      wire: above(wire, y, 0.7),
      place: below(place, y, 3),
      terminal: words.terminal,
      joint: above(joint, y, 2.4),
      lead: words.lead,
      hasFuse: made.fuse !== undefined,
      fuse: words.fuse,
      fuseDistance: words.fuseDistance,
      isGround: made.lead === 'ground',
      y: at(0),
      yText: at(1),
      yFuseBox: at(-1.5),
      yFuseText: at(-2.6),
      yDistance: at(3.2),
      yDistanceFrom: at(2.4),
      yDistanceTo: at(4),
      yDistanceText: at(6.8),
      yGroundFrom: at(2.8),
      yGroundOne: at(4.4),
      yGroundTwo: at(5.3),
      yGroundThree: at(6.2),
    },
  };
}

/**
 * The wiring of a job, lead by lead, ground last: words with their heights, and the text alternative.
 * @param job the job
 * @param writing the document's words
 */
export function wiringFigure(job: Job, writing: Writing) {
  const made = (job.connections ?? []).toSorted((one, other) => order.indexOf(one.lead) - order.indexOf(other.lead));
  let top = headHeight;
  const rows = made.map((each) => {
    const set = rowAt(each, top, job, writing);
    top = set.bottom;
    return set;
  });
  const inWords = rows.map(({ words }) => writing.sentences.figureLead({ ...words, fuse: words.fuseInWords }));
  return {
    rows: rows.map((each) => each.row),
    height: millimetres(top + 0.5),
    boxTop: millimetres(headHeight - 1.5),
    boxHeight: millimetres(top - headHeight + 1.5),
    jointX: millimetres(jointX),
    fuseX: millimetres(fuseX),
    distanceX: millimetres((jointX + fuseX) / 2),
    inWords: inWords.map((text) => ({ text })),
    alternative: inWords.join(' '),
  };
}
