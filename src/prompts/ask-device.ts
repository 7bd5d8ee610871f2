import { zones } from '../records/placement.ts';
import type { Question } from './question.ts';
import { isFitted, isWorked, textQuestion } from './text-question.ts';

const whole = (text: string) => (/^\d*$/.test(text) ? null : 'Type a whole number.');
const clock = (text: string) => (/^(([01]\d|2[0-3]):[0-5]\d)?$/.test(text) ? null : 'Type a time such as 08:30.');

/** The device, where it sits, how the harness runs; then time, notes and signature. */
export const deviceQuestions: readonly Question[] = [
  {
    id: 'device',
    applies: isFitted,
    ask: async (job, ask, around) => ({
      ...job,
      device: {
        ...job.device,
        profile: await ask.choose(
          'Device',
          around.devices.map((each) => each.id),
          around.devices[0]?.id ?? '',
        ),
      },
    }),
  },
  textQuestion(
    'serial',
    'Serial',
    (job, serial) => (job.device === undefined ? job : { ...job, device: { ...job.device, serial } }),
    { applies: isFitted },
  ),
  textQuestion(
    'imei',
    'IMEI',
    (job, imei) => (job.device === undefined ? job : { ...job, device: { ...job.device, imei } }),
    {
      applies: isFitted,
      check: (text) => (/^[\d -]{14,22}$|^$/.test(text) ? null : 'Type the 15 digits on the label.'),
    },
  ),
  {
    id: 'lamp',
    applies: isFitted,
    ask: async (job, ask, around) => {
      const usual = around.devices.find((each) => each.id === job.device?.profile)?.lampWhenWell ?? '';
      const lampSeen = await ask.text('Its lamp shows', usual);
      const active = await ask.confirm('Is it active?', true);
      return job.device === undefined
        ? job
        : { ...job, device: { ...job.device, ...(lampSeen === '' ? {} : { lampSeen }), active } };
    },
  },
  {
    id: 'placement',
    applies: isFitted,
    ask: async (job, ask) => {
      const zone = (await ask.choose('Where does it sit?', zones, 'dash left')) as (typeof zones)[number];
      const surface = (
        await ask.text('On what surface?', '', (text) => (text === '' ? 'Say what it sits on.' : null))
      ).trim();
      const fixing = (await ask.choose(
        'Held by',
        ['screws', 'cable ties', 'adhesive pad', 'bracket', 'hook-and-loop', 'loose'],
        'cable ties',
      )) as 'screws';
      const fixingPoints = Number(await ask.text('At how many points?', '2', whole));
      const firm = await ask.confirm('Firm when pulled by hand?', true);
      const above = (await ask.choose(
        'What is above it?',
        ['open sky', 'glass', 'plastic', 'fabric', 'wood', 'metal', 'heated or coated glass'],
        'plastic',
      )) as 'plastic';
      const clear = await ask.confirm('Clear of air bags, heads, heat, vents, view and controls?', true);
      const reachable = await ask.confirm('Reachable with tools, not by hand?', true);
      return {
        ...job,
        placement: {
          zone,
          surface,
          fixing,
          fixingPoints,
          firm,
          above,
          orientation: 'label up',
          inAirBagPath: !clear,
          inHeadStrikeArea: !clear,
          wet: false,
          blocks: [],
          reachableWithTools: reachable,
          reachableByHand: !reachable,
        },
      };
    },
  },
  {
    id: 'harness',
    applies: isFitted,
    ask: async (job, ask) => {
      const neat = await ask.confirm(
        'Spare harness loomed, tied to the vehicle’s own harness, slack right, clear of edges and moving parts?',
        true,
      );
      const interval = Number(await ask.text('Ties every, mm', '200', whole));
      return {
        ...job,
        harness: {
          loomed: neat,
          tied: neat,
          tieIntervalMillimetres: interval,
          slack: neat ? 'right' : 'loose',
          touches: [],
          tiedTo: neat ? ['vehicle harness'] : [],
        },
      };
    },
  },
];

/** Time, waiting, notes and signature: the end of the visit. */
export const closingQuestions: readonly Question[] = [
  {
    id: 'labour',
    applies: () => true,
    ask: async (job, ask) => {
      const start = await ask.text('Work began at', '', clock);
      const end = await ask.text('Work ended at', '', clock);
      const waitingMinutes = Number(await ask.text('Minutes waited', '0', whole));
      const waitingBecause = waitingMinutes === 0 ? '' : await ask.text('Waited for', '');
      return {
        ...job,
        labour: {
          breakMinutes: 0,
          hourlyExtras: [],
          extras: [],
          ...job.labour,
          waitingMinutes,
          ...(start === '' ? {} : { start: `${job.day}T${start}` }),
          ...(end === '' ? {} : { end: `${job.day}T${end}` }),
          ...(waitingBecause === '' ? {} : { waitingBecause }),
        },
      };
    },
  },
  {
    id: 'parts',
    applies: isWorked,
    ask: async (job, ask, around) => {
      const known = around.rates.parts.map((part) => part.id);
      const form = `Parts used (${known.join(', ') || 'none in the rate card'}; "loom-kit 1, fuse-holder 2")`;
      const text = await ask.text(form, '', (each) =>
        each === '' ||
        each
          .split(',')
          .every((part) => known.includes(part.trim().split(/\s+/)[0] ?? '') && /^\S+\s+\d+(\.\d+)?$/.test(part.trim()))
          ? null
          : 'Type the part’s name and how many.',
      );
      const parts = text
        .split(',')
        .map((each) => each.trim())
        .filter((each) => each !== '')
        .map((each) => {
          const [id = '', quantity = '1'] = each.split(/\s+/);
          return {
            what: around.rates.parts.find((part) => part.id === id)?.name ?? id,
            quantity,
            unit: 'each' as const,
            part: id,
          };
        });
      return { ...job, parts };
    },
  },
  textQuestion('notes', 'Notes', (job, notes) => ({ ...job, notes })),
  {
    id: 'signature',
    applies: () => true,
    ask: async (job, ask) => {
      const answer = (await ask.choose(
        'The customer',
        ['accepts', 'accepts with remark', 'refuses', 'not available'],
        'accepts',
      )) as 'accepts';
      const signed = (answer as string) !== 'not available';
      const text = await ask.text(signed ? 'Name of the signer' : 'Why did nobody sign?', '');
      const remark =
        (answer as string) === 'accepts with remark' || (answer as string) === 'refuses'
          ? await ask.text('Remark', '')
          : '';
      return {
        ...job,
        signature: {
          answer,
          ...(text === '' ? {} : signed ? { name: text } : { noSignatureBecause: text }),
          ...(remark === '' ? {} : { remark }),
        },
      };
    },
  },
];
