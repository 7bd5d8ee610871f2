import { type KeyPosition, keyPositions } from '../records/wire-role.ts';

/** One reading as typed. */
export type TypedReading = {
  readonly key: KeyPosition;
  readonly volts: number;
  readonly secondsWaited: number | null;
  /** true when the circuit carried the device or a lamp; the current where it was typed */
  readonly loaded: boolean;
  readonly loadMilliamps: number | null;
  /** black lead held against a wire known to be constant, instead of chassis */
  readonly reversed: boolean;
  /** black lead held at the battery's negative post */
  readonly toNegative: boolean;
  readonly steady: boolean;
  /** present when the vehicle's lamps were on */
  readonly lights?: 'on';
  /** present when it was typed how the battery isolator stood */
  readonly isolator?: 'open' | 'closed';
};

/** How a line of readings is typed, in one sentence for the prompt. */
export const readingForm =
  '"12.6@600" is volts and seconds waited; or "on 12.4", with loaded, 85mA, reversed, unsteady, lamps on';

const bare = /^(?:[-–—]|[-−]?\d+(?:\.\d+)?(?:@\d+)?)$/;
const words = String.raw`(?:\s+(?:loaded|reversed|unsteady|lamps(?:\s+on)?|isolator\s+(?:open|closed)|to\s+negative|\d+\s*mA))*`;
const full = new RegExp(String.raw`^([a-z]+)\s+([-−]?\d+(?:\.\d+)?)(?:\s*@\s*(\d+))?(${words})$`, 'i');

/**
 * Readings from one typed line, either bare volts in the order of `positions` ("12.57@720 12.49 12.4 10.4 14.1", "-" for not
 * measured) or each with its key position: "out 12.6@720, acc 0, on 12.4, run 14.0 loaded 85mA, on -12.4 reversed".
 * Key positions may be shortened; "@" gives the seconds waited. A decimal comma is understood between digits when asked for.
 * @param text what was typed
 * @param positions key positions of bare volts, in order
 * @param decimalComma true where the locale writes 12,6
 * @returns the readings, or a sentence that says what is not understood
 */
export function parseReadingLine(
  text: string,
  positions: readonly KeyPosition[] = [],
  decimalComma = false,
): readonly TypedReading[] | string {
  const line = decimalComma ? text.replace(/(\d),(\d)/g, '$1.$2').replaceAll(';', ',') : text;
  const parts = line
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '');
  const tokens = line.split(/[\s,]+/).filter((each) => each !== '');
  const typed =
    tokens.length > 0 && tokens.every((each) => bare.test(each)) ? placed(tokens, positions) : (parts as string[]);
  if (typeof typed === 'string') return typed;
  const readings: TypedReading[] = [];
  for (const part of typed) {
    const read = readOne(part);
    if (typeof read === 'string') return read;
    readings.push(read);
  }
  return readings.length === 0 ? 'Type at least one reading, such as "on 12.4".' : readings;
}

function placed(tokens: readonly string[], positions: readonly KeyPosition[]): string[] | string {
  if (positions.length === 0) return 'Say the key position with each reading, such as "on 12.4".';
  if (tokens.length > positions.length)
    return `There are ${tokens.length} readings for ${positions.length} key positions (${positions.join(', ')}).`;
  return tokens.flatMap((token, index) => (/^[-–—]$/.test(token) ? [] : [`${positions[index]} ${token}`]));
}

function readOne(part: string): TypedReading | string {
  const match = full.exec(part);
  if (match === null)
    return `"${part}" is not understood: write a key position and volts, such as "on 12.4" or "out 0@720".`;
  const word = (match[1] ?? '').toLowerCase();
  const found = keyPositions.filter((key) => key.startsWith(word));
  const key = found.find((each) => each === word) ?? (found.length === 1 ? found[0] : undefined);
  if (key === undefined) return `"${match[1]}" is no key position: use ${keyPositions.join(', ')}.`;
  const volts = Number((match[2] ?? '').replace('−', '-'));
  if (Math.abs(volts) > 60) return `${volts} V is out of range: only 12 V and 24 V systems are measured.`;
  const rest = match[4] ?? '';
  const current = /(\d+)\s*mA/i.exec(rest);
  return {
    key,
    volts,
    secondsWaited: match[3] === undefined ? null : Number(match[3]),
    loaded: /loaded/i.test(rest) || current !== null,
    loadMilliamps: current === null ? null : Number(current[1]),
    reversed: /reversed/i.test(rest),
    toNegative: /to\s+negative/i.test(rest),
    steady: !/unsteady/i.test(rest),
    ...(/lamps/i.test(rest) ? { lights: 'on' } : {}),
    ...(/isolator/i.test(rest) ? { isolator: /open/i.test(rest) ? 'open' : 'closed' } : {}),
  };
}
