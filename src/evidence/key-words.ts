import type { Job } from '../records/job.ts';
import type { KeyPosition } from '../records/wire-role.ts';

/** What decides how a key position is called on a vehicle. */
export type KeyWords = { readonly button: boolean; readonly electric: boolean };

/** How a job's vehicle names its key positions: by a key or a button, with an engine or without. */
export function keyWordsOf(job: Job): KeyWords {
  return {
    button: job.vehicle.start === 'button',
    electric: (job.vehicle.drive ?? 'combustion') !== 'combustion',
  };
}

/** A key position in words, as it reads in the middle of a sentence. */
export function where(key: KeyPosition, words: KeyWords): string {
  const said: Readonly<Record<KeyPosition, string>> = {
    out: words.button ? 'with the vehicle asleep' : 'with the key out',
    off: words.button ? 'switched off' : 'with the key off',
    accessory: 'in accessory',
    on: words.button ? 'with the ignition on' : 'with the key on',
    crank: 'while cranking',
    running: words.electric ? 'in ready' : 'with the engine running',
  };
  return said[key];
}

/** What ends the drive: what a waiting time is counted from. */
export function endOfDrive(words: KeyWords): string {
  return words.button ? 'locking the vehicle' : 'key out';
}

/** Seconds as a person says them: "90 s", "12 min". */
export function writeWait(seconds: number): string {
  return seconds < 120 || seconds % 60 !== 0 ? `${seconds} s` : `${seconds / 60} min`;
}
