import { describe, expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { interview, questions } from '../../src/prompts/interview.ts';
import { mayTell, toldAfter } from '../../src/prompts/may-tell.ts';
import { type Ask, GoBack, storedOf } from '../../src/prompts/question.ts';
import { type Job, job as jobRecord } from '../../src/records/job.ts';
import type { Payer } from '../../src/records/payer.ts';
import { rules } from '../../src/rules/index.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';

const facts = soundFacts(soundJob);
const around = {
  book: facts.book,
  rates: { parts: [], extras: [] } as never,
  payers: () => [{ id: 'example-payer', name: 'Example Payer', needsPhotographs: [] } as unknown as Payer],
  keepPayer: () => {},
  clock: '',
  photographs: () => ({ folder: 'photos', files: [] }),
  hints: () => [],
  devices: facts.profile === null ? [] : [facts.profile],
  evidenceOf: (job: Job) => identifyWires(job, []),
  tell: () => {},
};
const begun = jobRecord.parse({ schema: 'keyout-job-1', id: '2026-11-24-TEST', day: '2026-11-24' });

function answering(answers: Readonly<Record<string, string>>, asked: string[] = []): Ask {
  const all = {
    ...answers,
    'Name of the signer': 'Ada Quill',
    'On what surface?': 'steel bracket',
    'Where is it?': 'left kick panel',
  };
  const find = (message: string) => Object.entries(all).find(([start]) => message.startsWith(start))?.[1];
  return {
    text: async (message, usual) => {
      asked.push(message);
      return find(message) ?? usual;
    },
    choose: async (message, choices, usual) => {
      asked.push(message);
      return choices.map(storedOf).find((value) => value === find(message)) ?? usual;
    },
    confirm: async (_message, usual) => usual,
    decide: async () => false,
    tick: async (_message, _items, usual) => usual,
  };
}

describe('the interview', () => {
  test('a wasted visit asks only who, which vehicle, why, when and who signs', async () => {
    const asked: string[] = [];
    const done = await interview(
      begun,
      answering({ 'What is done?': 'wasted visit', 'Why could nothing': 'gate locked', 'Unit number': 'EX-2' }, asked),
      around,
      () => {},
    );
    expect(done.identity).toMatchObject({
      visit: 'wasted visit',
      wastedBecause: 'gate locked',
      payer: 'example-payer',
    });
    expect(asked.some((message) => /Supply|Wire|lead/.test(message))).toBe(false);
  });

  test('every answer is saved, and a stopped interview goes on where it stopped', async () => {
    const saved: Job[] = [];
    const stopping: Ask = {
      ...answering({}),
      text: async (message) => {
        if (message.startsWith('Maker')) throw new Error('stop');
        return '';
      },
    };
    await expect(interview(begun, stopping, around, (job) => void saved.push(job))).rejects.toThrow('stop');
    const asked: string[] = [];
    const last = saved.at(-1) ?? begun;
    await interview(last, answering({ 'What is done?': 'removal' }, asked), around, () => {});
    expect(asked[0]).toMatch(/^Maker/);
  });

  test.each([
    ['Volts at the battery at rest, before', '126', '12.6', 'before.restVolts'],
    ['Year', '1949', '1951', 'vehicle.year'],
    ['Battery capacity', '0', '70', 'vehicle.batteryAmpereHours'],
    ['The vehicle’s own current', '99999', '20', 'vehicle.asleepMilliamps'],
    ['Days it may stand', '9999', '14', 'vehicle.standingDays'],
    ['Minutes waited', '99999', '15', 'labour.waitingMinutes'],
    ['Plate', 'x'.repeat(201), 'VLT 4417', 'vehicle.plate'],
  ])(
    '"%s: %s" is refused with its field, asked again, and never kills the job',
    async (message, wrong, right, field) => {
      const told: string[] = [];
      const saved: Job[] = [];
      let given = 0;
      const slipping: Ask = {
        ...answering({ 'What is done?': 'removal' }),
        text: async (asked, usual) => {
          if (asked.startsWith('Name of the signer')) return 'Ada Quill';
          if (!asked.startsWith(message)) return usual;
          given += 1;
          return given === 1 ? wrong : right;
        },
      };
      const listening = { ...around, tell: (text: string) => void told.push(text) };
      const done = await interview(begun, slipping, listening, (job) => void saved.push(job));
      expect(given).toBe(2);
      expect(told.filter((text) => text.includes(field))).toHaveLength(1);
      for (const each of [...saved, done]) expect(jobRecord.safeParse(each).success).toBe(true);
    },
  );

  test('a job that an older program left with an answer it cannot hold is asked that question again', async () => {
    const stuck = jobRecord.parse({
      ...begun,
      interview: {
        answered: questions.map((each) => each.id).filter((id) => id !== 'condition-before'),
        draft: { question: 'condition-before', answers: ['none', 'none', '126', ''] },
      },
    });
    const asked: string[] = [];
    const done = await interview(stuck, answering({ 'Volts at the battery at rest': '12.6' }, asked), around, () => {});
    expect(done.before?.restVolts).toBe(12.6);
  });

  test('going back asks the question before again', async () => {
    let times = 0;
    const back: Ask = {
      ...answering({ 'What is done?': 'wasted visit' }),
      text: async (message, usual) => {
        if (message.startsWith('Model')) {
          times += 1;
          if (times === 1) throw new GoBack();
        }
        if (message.startsWith('Name of the signer')) return 'Ada Quill';
        return message.startsWith('Maker') ? `Maker ${times}` : usual;
      },
    };
    const done = await interview(begun, back, around, () => {});
    expect(done.vehicle.maker).toBe('Maker 1');
  });
});

describe('when a finding is told', () => {
  test('each rule that waits is a rule, and waits for a question there is', () => {
    const ids = questions.map((question) => question.id);
    for (const [rule, question] of Object.entries(toldAfter)) {
      expect(rules.map((each) => each.id)).toContain(rule);
      expect(ids).toContain(question);
    }
  });

  test('a missing purchase order is not told before it was asked for', () => {
    expect(mayTell('purchase-order-where-the-payer-needs-one', begun)).toBe(false);
    const asked = { ...begun, interview: { answered: ['purchase-order'] } };
    expect(mayTell('purchase-order-where-the-payer-needs-one', asked)).toBe(true);
  });
});
