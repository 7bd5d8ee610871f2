import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import { groundDropMillivoltsMax } from '../../evidence/electrical-limits.ts';
import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import type { Voice } from '../rule-words.ts';

const cleanIt = 'Clean to bare metal, tighten, or choose another ground.';

const words = {
  summary: (voice: Voice) =>
    `The ground drops at most ${voice.voltLimit(groundDropMillivoltsMax)} under the device's load.`,
  why: 'A poor ground makes a device fail in ways that look like everything else.',
  says: {
    'drops too much': (ground: { drop: number; milliamps: number | null; most: number }) => ({
      what: `The ground drops ${ground.drop} mV at ${ground.milliamps ?? 'an unknown number of'} mA; ${ground.most} mV at most.`,
      whatToDo: cleanIt,
    }),
    'current not recorded': (ground: { drop: number }) => ({
      what: `The ground drops ${ground.drop} mV, at a current that is not recorded.`,
      whatToDo: 'Record what flowed: the device awake, or a test lamp.',
    }),
    'would drop too much': (ground: {
      drop: number;
      milliamps: number;
      atAwake: number;
      awake: number;
      most: number;
    }) => ({
      what: `The ground drops ${ground.drop} mV at ${ground.milliamps} mA, which makes ${ground.atAwake} mV at the ${ground.awake} mA that the device draws awake; ${ground.most} mV at most.`,
      whatToDo: cleanIt,
    }),
  },
};

const withDrop = (dropMillivolts: number, testMilliamps?: number) => (job: JobInput) => ({
  ...job,
  ground: {
    kind: 'chassis bolt' as const,
    where: 'cowl',
    dropMillivolts,
    ...(testMilliamps === undefined ? {} : { testMilliamps }),
  },
});

/** The ground drops at most 0.1 V under the device's load. */
export const groundDropIsSmall = defineRule({
  id: 'ground-drop-is-small',
  group: 'wiring',
  severity: 'reason',
  source: 'common practice, no source; a drop tells nothing without its current (Ohm’s law: 0.1 V at 50 mA is 2 ohm)',
  words,
  check: ({ job, profile, book }) => {
    if (job.identity.visit === 'wasted visit') return [];
    const { groundDropMillivolts, groundTestMilliamps } = workOutElectrics(job, profile, book);
    if (groundDropMillivolts === null) return [];
    const drop = Math.abs(groundDropMillivolts);
    const most = groundDropMillivoltsMax;
    if (drop > most)
      return [{ at: 'ground', says: 'drops too much', figures: { drop, milliamps: groundTestMilliamps, most } }];
    if (groundTestMilliamps === null)
      return [{ at: 'ground', says: 'current not recorded', figures: { drop }, severity: 'advise' }];
    const awake = profile?.awakeMilliamps ?? 0;
    const atAwake = groundTestMilliamps === 0 ? 0 : Math.ceil((drop * awake) / groundTestMilliamps - 1e-9);
    if (groundTestMilliamps >= awake || atAwake <= most) return [];
    return [
      {
        at: 'ground',
        says: 'would drop too much',
        figures: { drop, milliamps: groundTestMilliamps, atAwake, awake, most },
      },
    ];
  },
  examples: [
    { name: '100 mV at 85 mA', change: withDrop(100, 85), finds: [] },
    {
      name: '101 mV at 85 mA',
      change: withDrop(101, 85),
      finds: [
        {
          at: 'ground',
          severity: 'reason',
          what: 'The ground drops 101 mV at 85 mA; 100 mV at most.',
          whatToDo: 'Clean to bare metal, tighten, or choose another ground.',
        },
      ],
    },
    {
      name: '20 mV at a current not recorded',
      change: withDrop(20),
      finds: [
        {
          at: 'ground',
          severity: 'advise',
          what: 'The ground drops 20 mV, at a current that is not recorded.',
          whatToDo: 'Record what flowed: the device awake, or a test lamp.',
        },
      ],
    },
    {
      name: '60 mV at 40 mA, where the device draws 80 mA',
      change: withDrop(60, 40),
      facts: { profile: exampleProfile },
      finds: [
        {
          at: 'ground',
          severity: 'reason',
          what: 'The ground drops 60 mV at 40 mA, which makes 120 mV at the 80 mA that the device draws awake; 100 mV at most.',
          whatToDo: 'Clean to bare metal, tighten, or choose another ground.',
        },
      ],
    },
  ],
});
