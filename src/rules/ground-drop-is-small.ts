import { workOutElectrics } from '../electrics/work-out-electrics.ts';
import type { JobInput } from '../records/job.ts';
import { exampleProfile } from './example-profile.ts';
import type { Rule } from './rule.ts';

const groundDropMillivoltsMax = 100;

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
export const groundDropIsSmall: Rule = {
  id: 'ground-drop-is-small',
  group: 'wiring',
  severity: 'reason',
  summary: "The ground drops at most 0.1 V under the device's load.",
  why: 'A poor ground makes a device fail in ways that look like everything else.',
  source: 'common practice, no source; a drop tells nothing without its current (Ohm’s law: 0.1 V at 50 mA is 2 ohm)',
  check: ({ job, profile, book }) => {
    if (job.identity.visit === 'wasted visit') return [];
    const { groundDropMillivolts, groundTestMilliamps } = workOutElectrics(job, profile, book);
    if (groundDropMillivolts === null) return [];
    const drop = Math.abs(groundDropMillivolts);
    const whatToDo = 'Clean to bare metal, tighten, or choose another ground.';
    if (drop > groundDropMillivoltsMax)
      return [
        {
          at: 'ground',
          what: `The ground drops ${drop} mV at ${groundTestMilliamps ?? 'an unknown number of'} mA; ${groundDropMillivoltsMax} mV at most.`,
          whatToDo,
        },
      ];
    if (groundTestMilliamps === null)
      return [
        {
          at: 'ground',
          what: `The ground drops ${drop} mV, at a current that is not recorded.`,
          whatToDo: 'Record what flowed: the device awake, or a test lamp.',
          severity: 'advise',
        },
      ];
    const awake = profile?.awakeMilliamps ?? 0;
    const atAwake = groundTestMilliamps === 0 ? 0 : Math.ceil((drop * awake) / groundTestMilliamps - 1e-9);
    if (groundTestMilliamps >= awake || atAwake <= groundDropMillivoltsMax) return [];
    return [
      {
        at: 'ground',
        what: `The ground drops ${drop} mV at ${groundTestMilliamps} mA, which makes ${atAwake} mV at the ${awake} mA that the device draws awake; ${groundDropMillivoltsMax} mV at most.`,
        whatToDo,
      },
    ];
  },
  examples: [
    { name: '100 mV at 85 mA', change: withDrop(100, 85), finds: [] },
    { name: '101 mV at 85 mA', change: withDrop(101, 85), finds: ['ground'] },
    { name: '20 mV at a current not recorded (advice)', change: withDrop(20), finds: ['ground'] },
    {
      name: '60 mV at 40 mA, where the device draws 80 mA',
      change: withDrop(60, 40),
      facts: { profile: exampleProfile },
      finds: ['ground'],
    },
  ],
};
