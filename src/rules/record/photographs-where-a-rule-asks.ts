import type { Job } from '../../records/job.ts';
import { withConnection, withPlacement } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** What should be seen on a picture, and why, for this job. */
function wanted(job: Job): readonly { readonly shows: 'device' | 'joint' | 'ground'; readonly because: string }[] {
  const { placement, connections, ground } = workDone(job);
  return [
    ...(placement?.zone === 'windscreen'
      ? [{ shows: 'device' as const, because: 'it is on the windscreen, where its place is measured against the law' }]
      : []),
    ...((connections ?? []).some((made) => made.stripped === 'strands cut' || made.stripped === 'strands nicked')
      ? [{ shows: 'joint' as const, because: 'strands were damaged' }]
      : []),
    ...(ground?.kind === 'drilled screw'
      ? [{ shows: 'ground' as const, because: 'a hole was drilled into the vehicle' }]
      : []),
  ];
}

/** What may be questioned later is on a photograph. */
export const photographsWhereARuleAsks: Rule = {
  id: 'photographs-where-a-rule-asks',
  group: 'record',
  severity: 'advise',
  summary:
    'What may be questioned later is on a photograph: a device on the windscreen, damaged strands, a drilled hole.',
  why: 'A picture taken on the day ends an argument that words only lengthen.',
  source: 'common practice, no source',
  check: ({ job }) =>
    wanted(job)
      .filter(({ shows }) => !(job.photographs ?? []).some((photograph) => photograph.shows === shows))
      .map(
        ({ shows, because }): RuleHit => ({
          at: shows,
          what: `There is no photograph of the ${shows}, though ${because}.`,
          whatToDo: `Take one and put it into photos/${job.id}/.`,
        }),
      ),
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
  ],
};
