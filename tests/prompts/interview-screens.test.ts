import { describe, expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { askInTerminal } from '../../src/prompts/ask-in-terminal.ts';
import { interview } from '../../src/prompts/interview.ts';
import { GoBack } from '../../src/prompts/question.ts';
import { type Job, job as jobRecord } from '../../src/records/job.ts';
import { soundFacts, soundJob, soundPayer } from '../../src/rules/sound-job.ts';
import { fakeTerminal } from './fake-terminal.ts';

const facts = soundFacts(soundJob);
const around = {
  book: facts.book,
  rates: { parts: [], extras: [] } as never,
  payers: () => [soundPayer],
  keepPayer: () => {},
  clock: '09:30',
  photographs: () => ({ folder: 'photos', files: [] }),
  hints: () => [],
  devices: facts.profile === null ? [] : [facts.profile],
  evidenceOf: (job: Job) => identifyWires(job, []),
  tell: () => {},
};

function sitting() {
  const fake = fakeTerminal();
  const answer = async (text: string) => {
    if (text !== '') await fake.type(text);
    await fake.keypress('enter');
  };
  return { ...fake, ask: askInTerminal(fake.terminal), answer };
}

describe('the prompts as they appear', () => {
  test('a wasted visit is recorded from the first prompt to the signature', async () => {
    const { ask, answer, shows, type, keypress } = sitting();
    const saved: Job[] = [];
    const begun = jobRecord.parse({ schema: 'keyout-job-1', id: '2026-11-24-TEST', day: '2026-11-24' });
    const done = interview(begun, ask, around, (job) => void saved.push(job));
    expect(await shows('Who pays?')).toBe('Who pays?');
    await answer('');
    expect(await shows('What is done?')).toBe('What is done?');
    await answer('wasted');
    for (const [prompt, text] of [
      ['Whose vehicle is it?', 'Quarry Nine'],
      ['Who speaks for them?', ''],
      ['Where?', 'North gate'],
      ['Purchase order', ''],
      ['Installer', ''],
      ['Part of this day', ''],
      ['Why could nothing be done?', 'gate locked'],
      ['Minutes waited', '40'],
      ['Waited for', 'the key'],
      ['Work began at', ''],
      ['Maker', 'Corvane'],
      ['Model', ''],
      ['Year', ''],
      ['Plate', 'QN 9'],
      ['Unit number', ''],
      ['VIN', ''],
      ['Class', 'heavy'],
      ['Work ended at', '10:15'],
      ['Minutes of breaks', ''],
      ['Money already taken', ''],
      ['Discount agreed', ''],
      ['Notes for the sheet', ''],
      ['The customer', 'not'],
    ] as const) {
      expect(await shows(prompt)).toBe(prompt);
      await answer(text);
    }
    expect(await shows('Why did nobody sign?')).toBe('Why did nobody sign?');
    await type('nobody there');
    await keypress('enter');
    const job = await done;
    expect(job).toMatchObject({
      identity: { visit: 'wasted visit', wastedBecause: 'gate locked', place: 'North gate' },
      vehicle: { maker: 'Corvane', plate: 'QN 9', class: 'heavy truck' },
      labour: {
        waitingMinutes: 40,
        waitingBecause: 'the key',
        start: '2026-11-24T09:30',
        end: '2026-11-24T10:15',
      },
      signature: { answer: 'not available', noSignatureBecause: 'nobody there' },
    });
    expect(saved.length).toBeGreaterThan(24);
  });

  test('a wrong answer is refused at once with a sentence, and the prompt stays', async () => {
    const { ask, answer, shows, type, keypress } = sitting();
    const asked = ask.text('Year', '', (text) => (/^\d{4}$/.test(text) ? null : 'Type a year such as 2024.'));
    await answer('20x4');
    expect(await shows('Type a year such as 2024.')).toBe('Type a year such as 2024.');
    for (let place = 0; place < 4; place += 1) await keypress('backspace');
    await type('2024');
    await keypress('enter');
    await expect(asked).resolves.toBe('2024');
  });

  test('a fact nobody may pass over wants y or n, not Enter', async () => {
    const { ask, answer, shows, type, keypress } = sitting();
    const asked = ask.decide('In the way of an air bag?');
    await answer('');
    expect(await shows('Type y or n.')).toBe('Type y or n.');
    await type('n');
    await keypress('enter');
    await expect(asked).resolves.toBe(false);
  });

  test('"<" asks for the prompt before, "-" takes the usual answer away', async () => {
    const { ask, type, keypress } = sitting();
    const back = expect(ask.text('Model', 'Haul 150')).rejects.toThrow(GoBack);
    await type('<');
    await keypress('enter');
    await back;
    const away = ask.text('Model', 'Haul 150');
    await type('-');
    await keypress('enter');
    await expect(away).resolves.toBe('');
  });

  test('a list to mark gives those marked', async () => {
    const { ask, keypress } = sitting();
    const marked = ask.tick('Mark what is so', ['tied', 'covered', 'wet'], []);
    await keypress('space');
    await keypress('down');
    await keypress('space');
    await keypress('enter');
    await expect(marked).resolves.toEqual(['tied', 'covered']);
  });
});
