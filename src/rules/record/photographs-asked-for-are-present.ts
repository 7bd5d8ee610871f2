import { defineRule } from '../define-rule.ts';
import { soundPayer } from '../sound-job.ts';

/** What can be seen although no work was done. */
const withoutWork = ['vehicle', 'plate', 'odometer', 'damage'];

const words = {
  summary: () => 'Every photograph that the payer asks for was taken.',
  why: 'An invoice without the pictures that were agreed is sent back, weeks later.',
  says: {
    'not taken': (photograph: { payer: string; shows: string; job: string }) => ({
      what: `${photograph.payer} asks for a photograph of: ${photograph.shows}.`,
      whatToDo: `Take it, put it into photos/${photograph.job}/ and record what it shows; or write why there is none.`,
    }),
  },
};

/** Every photograph that the payer asks for was taken. */
export const photographsAskedForArePresent = defineRule({
  id: 'photographs-asked-for-are-present',
  group: 'record',
  severity: 'reason',
  source: "the payer's own terms, in payers/",
  words,
  check: ({ job, payer }) => {
    if (payer === null) return [];
    const taken = new Set<string>((job.photographs ?? []).map((photograph) => photograph.shows.toLowerCase()));
    const wanted = [...new Set((payer.needsPhotographs ?? []).map((name) => name.trim().toLowerCase()))];
    return wanted
      .filter((name) => name !== '' && !taken.has(name))
      .filter((name) => job.identity.visit !== 'wasted visit' || withoutWork.includes(name))
      .map((shows) => ({ at: shows, says: 'not taken', figures: { payer: payer.name, shows, job: job.id } }));
  },
  examples: [
    { name: 'a payer that asks for none', change: (job) => job, facts: { payer: soundPayer }, finds: [] },
    {
      name: 'joint and odometer asked for and taken',
      change: (job) => ({
        ...job,
        photographs: [
          { file: 'joint.jpg', shows: 'joint' },
          { file: 'odometer.jpg', shows: 'odometer' },
        ],
      }),
      facts: { payer: { ...soundPayer, needsPhotographs: ['joint', 'Odometer'] } },
      finds: [],
    },
    {
      name: 'the odometer is missing',
      change: (job) => ({ ...job, photographs: [{ file: 'joint.jpg', shows: 'joint' }] }),
      facts: { payer: { ...soundPayer, needsPhotographs: ['joint', 'odometer'] } },
      finds: [
        {
          at: 'odometer',
          severity: 'reason',
          what: 'Example payer asks for a photograph of: odometer.',
          whatToDo:
            'Take it, put it into photos/2026-11-24-KX4D/ and record what it shows; or write why there is none.',
        },
      ],
    },
    {
      name: 'a joint asked for on a wasted visit',
      change: (job) => ({ ...job, identity: { ...job.identity, visit: 'wasted visit', wastedBecause: 'gate locked' } }),
      facts: { payer: { ...soundPayer, needsPhotographs: ['joint', 'plate'] } },
      finds: [
        {
          at: 'plate',
          severity: 'reason',
          what: 'Example payer asks for a photograph of: plate.',
          whatToDo:
            'Take it, put it into photos/2026-11-24-KX4D/ and record what it shows; or write why there is none.',
        },
      ],
    },
  ],
});
