import type { KeyWords } from './key-words.ts';
import type { Speech } from './speech.ts';
import { speechFor } from './speech-for.ts';
import { wordsIn } from './words-in.ts';

/** The language of the terminal; documents are written in their reader's. */
export const terminalWords = wordsIn('en');

/** How the terminal says facts about a vehicle: decimal points, plain minus signs and ISO days, as they are typed. */
export function terminalSpeech(vehicle: KeyWords): Speech {
  return speechFor(terminalWords, vehicle, { mark: '.', minus: '-', gap: ' ', day: (date) => date });
}
