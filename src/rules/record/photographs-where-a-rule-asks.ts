import type { Job } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection, withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

/** What should be seen on a picture, and what is said where it is not. */
function wanted(job: Job) {
  const { placement, connections, ground } = workDone(job);
  return [
    ...(placement?.zone === 'windscreen'
      ? [{ at: 'device', says: 'none of the device on the windscreen' } as const]
      : []),
    ...((connections ?? []).some((made) => made.stripped === 'strands cut' || made.stripped === 'strands nicked')
      ? [{ at: 'joint', says: 'none of the damaged strands' } as const]
      : []),
    ...(ground?.kind === 'drilled screw' ? [{ at: 'ground', says: 'none of the drilled hole' } as const] : []),
  ];
}

const takeOne = (job: string) => `Take one and put it into photos/${job}/.`;

const words = {
  summary: () =>
    'What may be questioned later is on a photograph: a device on the windscreen, damaged strands, a drilled hole.',
  why: 'A picture taken on the day ends an argument that words only lengthen.',
  says: {
    'none of the device on the windscreen': (job: { id: string }) => ({
      what: 'There is no photograph of the device, though it is on the windscreen, where its place is measured against the law.',
      whatToDo: takeOne(job.id),
    }),
    'none of the damaged strands': (job: { id: string }) => ({
      what: 'There is no photograph of the joint, though strands were damaged.',
      whatToDo: takeOne(job.id),
    }),
    'none of the drilled hole': (job: { id: string }) => ({
      what: 'There is no photograph of the ground, though a hole was drilled into the vehicle.',
      whatToDo: takeOne(job.id),
    }),
  },
};

/** What may be questioned later is on a photograph. */
export const photographsWhereARuleAsks = defineRule({
  id: 'photographs-where-a-rule-asks',
  group: 'record',
  severity: 'advise',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    wanted(job)
      .filter(({ at }) => !(job.photographs ?? []).some((photograph) => photograph.shows === at))
      .map(({ at, says }) => ({ at, says, figures: { id: job.id } })),
  examples: [
    { name: 'nothing unusual', change: (job) => job, finds: [] },
    {
      name: 'on the windscreen',
      change: withPlacement({ zone: 'windscreen' }),
      finds: [
        {
          at: 'device',
          severity: 'advise',
          what: 'There is no photograph of the device, though it is on the windscreen, where its place is measured against the law.',
          whatToDo: 'Take one and put it into photos/2026-11-24-KX4D/.',
        },
      ],
    },
    {
      name: 'nicked strands',
      change: withConnection('supply', { stripped: 'strands nicked' }),
      finds: [
        {
          at: 'joint',
          severity: 'advise',
          what: 'There is no photograph of the joint, though strands were damaged.',
          whatToDo: 'Take one and put it into photos/2026-11-24-KX4D/.',
        },
      ],
    },
    {
      name: 'a drilled ground with its picture',
      change: (job) => ({
        ...job,
        ground: { kind: 'drilled screw', where: 'cowl' },
        photographs: [{ file: 'ground.jpg', shows: 'ground' }],
      }),
      finds: [],
    },
    {
      name: 'a drilled ground without a picture',
      change: (job) => ({ ...job, ground: { kind: 'drilled screw', where: 'cowl' } }),
      finds: [
        {
          at: 'ground',
          severity: 'advise',
          what: 'There is no photograph of the ground, though a hole was drilled into the vehicle.',
          whatToDo: 'Take one and put it into photos/2026-11-24-KX4D/.',
        },
      ],
    },
  ],
});
