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

const byKey: Readonly<Record<KeyPosition, string>> = {
  out: 'with the key out',
  off: 'with the key off',
  accessory: 'in accessory',
  on: 'with the key on',
  crank: 'while cranking',
  running: 'with the engine running',
};
const byButton: Readonly<Record<KeyPosition, string>> = {
  ...byKey,
  out: 'with the vehicle asleep',
  off: 'with the vehicle switched off',
  on: 'with the ignition on',
};

/** A key position in words, as it reads in the middle of a sentence. */
export function where(key: KeyPosition, words: KeyWords): string {
  if (words.electric && key === 'running') return 'in ready';
  return (words.button ? byButton : byKey)[key];
}

/** What ends the drive: what a waiting time is counted from. */
export function endOfDrive(words: KeyWords): string {
  return words.button ? 'locking the vehicle' : 'key out';
}

/** Seconds as a person says them: "90 s", "12 min". */
export function writeWait(seconds: number): string {
  return seconds < 120 || seconds % 60 !== 0 ? `${seconds} s` : `${seconds / 60} min`;
}
