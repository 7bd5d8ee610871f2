import { writeGauge } from '../electrics/smallest-conductor.ts';
import { writeVolts } from '../quantities/millivolts.ts';
import type { Voice } from '../rules/rule-words.ts';
import { type KeyWords, keyName } from './key-words.ts';
import { sayReadings } from './say-readings.ts';
import { sayTrap } from './say-trap.ts';
import { sayWanted } from './say-wanted.ts';
import { sayWire } from './say-wire.ts';
import type { Speech } from './speech.ts';
import type { Words } from './words.ts';

/** How figures are written: the decimal and the minus character, the gap before a unit, and days. */
export type Figures = {
  readonly mark: '.' | ',';
  readonly minus: '-' | '−';
  /** between a number and its unit */
  readonly gap: ' ' | '\u00a0';
  readonly day: (date: string) => string;
};

/**
 * How facts are said in one language about one vehicle.
 * @param words the language
 * @param vehicle what decides how its key positions are called
 * @param figures how figures are written
 */
export function speechFor(
  words: Pick<Words, 'evidence' | 'sentences' | 'terms'>,
  vehicle: KeyWords,
  figures: Figures,
): Speech {
  const { evidence, sentences, terms } = words;
  const { mark } = figures;
  const marked = (text: string) => text.replace('.', mark);
  const minus = (text: string) => text.replace('-', figures.minus);
  const volts = (millivolts: number) => minus(`${writeVolts(millivolts, mark)}${figures.gap}V`);
  const decimal = (value: number) => minus(marked(String(Math.round(value * 1e6) / 1e6)));
  const shortName = (key: Parameters<Voice['key']>[0]) => {
    const name = keyName(key, vehicle);
    return terms.keys[name === 'switched off' || name === 'ignition on' ? key : name];
  };
  const speech: Speech = {
    evidence,
    endOfDrive: vehicle.start === 'button' ? evidence.endOfDrive.button : evidence.endOfDrive.key,
    wait: (seconds) =>
      seconds < 120 || seconds % 60 !== 0 ? evidence.seconds(String(seconds)) : evidence.minutes(String(seconds / 60)),
    tenths: (value) => marked(value.toFixed(1)),
    volts,
    voltLimit: (millivolts) => `${decimal(millivolts / 1000)}${figures.gap}V`,
    decimal,
    day: figures.day,
    where: (key) => evidence.where[keyName(key, vehicle)],
    lead: (lead) => terms.leads[lead],
    role: (role) => terms.roles[role],
    wire: (wire) => sayWire(wire, speech),
    readings: (readings) => sayReadings(readings, speech),
    wanted: (reading) => sayWanted(reading, speech),
    and: sentences.and,
    or: sentences.or,
    gauge: (gauge) => marked(writeGauge(gauge)),
    key: shortName,
    voltRange: (least, most) => evidence.voltRange(writeVolts(least, mark), writeVolts(most, mark)),
    number: evidence.number,
    trap: (trap) => sayTrap(trap, speech),
  };
  return speech;
}
