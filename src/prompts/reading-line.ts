import { type KeyPosition, keyPositions } from '../records/wire-role.ts';

/** One reading as typed: key position, volts, seconds waited, loaded, against a live wire. */
export type TypedReading = {
  readonly key: KeyPosition;
  readonly volts: number;
  readonly secondsWaited: number | null;
  readonly loaded: boolean;
  readonly reversed: boolean;
};

/**
 * Readings from one typed line: "out 12.6@720, acc 0, on 12.4, crank 10.3, run 14.1, run 14.0 loaded, on -12.4 reversed".
 * Key positions may be shortened; "@" gives the seconds waited.
 * @param text what was typed
 * @returns the readings, or a sentence that says what is not understood
 */
export function parseReadingLine(text: string): readonly TypedReading[] | string {
  const readings: TypedReading[] = [];
  for (const part of text
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '')) {
    const match = /^([a-z]+)\s+([-−]?\d+(?:\.\d+)?)(?:\s*@\s*(\d+))?((?:\s+(?:loaded|reversed))*)$/i.exec(part);
    if (match === null)
      return `"${part}" is not understood: write a key position and volts, such as "on 12.4" or "out 0@720".`;
    const word = (match[1] ?? '').toLowerCase();
    const found = keyPositions.filter((key) => key.startsWith(word));
    const key = found.find((each) => each === word) ?? (found.length === 1 ? found[0] : undefined);
    if (key === undefined) return `"${match[1]}" is no key position: use ${keyPositions.join(', ')}.`;
    const volts = Number((match[2] ?? '').replace('−', '-'));
    if (Math.abs(volts) > 60) return `${volts} V is out of range: only 12 V and 24 V systems are measured.`;
    readings.push({
      key,
      volts,
      secondsWaited: match[3] === undefined ? null : Number(match[3]),
      loaded: /loaded/i.test(match[4] ?? ''),
      reversed: /reversed/i.test(match[4] ?? ''),
    });
  }
  return readings.length === 0 ? 'Type at least one reading, such as "on 12.4".' : readings;
}
