import { deviceLeads } from '../../records/connection.ts';
import type { Job } from '../../records/job.ts';
import { withConnection, withHarness, withPlacement } from '../overlay.ts';
import type { JobFacts, Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** A recorded section, and the facts in it that no other rule asks for; a fact not recorded is undefined. */
type Section = readonly [place: string, facts: Readonly<Record<string, unknown>>];

function sections(job: Job, profile: JobFacts['profile']): readonly Section[] {
  const { connections, harness, placement, ground } = workDone(job);
  const joints = (connections ?? []).map((made): Section => {
    const unstripped = made.method === 'connector pin' || made.method === 'plug-in fuse tap';
    return [
      made.lead,
      {
        'how it was stripped': unstripped || made.stripped,
        'whether it is tied': made.tied,
        'whether its fuse is taped and tied': made.fuse === undefined || made.fuse.tapedAndTied,
      },
    ];
  });
  const groundSection: Section = [
    'ground point',
    { 'whether it stands on bare metal': ground?.bareMetal, 'whether it is shakeproof': ground?.shakeproof },
  ];
  const harnessSection: Section = [
    'harness',
    { 'whether it is loomed': harness?.loomed, 'whether it is tied': harness?.tied, 'its slack': harness?.slack },
  ];
  const deviceSection: Section = [
    'device',
    {
      'whether a head or knee may strike it': placement?.inHeadStrikeArea,
      'whether tools reach it': placement?.reachableWithTools,
      'whether a hand reaches it': placement?.reachableByHand,
      'what is above its antenna': profile?.hasAntenna === false ? 'no antenna' : placement?.above,
    },
  ];
  return [
    ...joints,
    ...(ground === undefined ? [] : [groundSection]),
    ...(harness === undefined ? [] : [harnessSection]),
    ...(placement === undefined ? [] : [deviceSection]),
  ];
}

const leads: readonly string[] = deviceLeads;

/** What the rules rest on is recorded: a tick that nobody set proves nothing. */
export const noFactIsLeftOpen: Rule = {
  id: 'no-fact-is-left-open',
  group: 'record',
  severity: 'advise',
  summary: 'What the rules rest on is recorded: joints, ground, harness and place.',
  why: 'A rule finds nothing wrong in what was never looked at; the sheet would claim more than was seen.',
  source: 'common practice, no source',
  check: ({ job, profile }) =>
    sections(job, profile).flatMap(([at, facts]): readonly RuleHit[] => {
      const open = Object.keys(facts).filter((name) => facts[name] === undefined);
      if (open.length === 0) return [];
      return [
        {
          at,
          what: `Not recorded of the ${leads.includes(at) ? `${at} lead` : at}: ${open.join(', ')}.`,
          whatToDo: 'Look, and record what you see.',
        },
      ];
    }),
  examples: [
    { name: 'everything looked at', change: (job) => job, finds: [] },
    {
      name: 'a joint of which nobody says that it is tied',
      change: withConnection('ignition', { tied: undefined }),
      finds: [
        {
          at: 'ignition',
          severity: 'advise',
          what: 'Not recorded of the ignition lead: whether it is tied.',
          whatToDo: 'Look, and record what you see.',
        },
      ],
    },
    {
      name: 'nothing said of the harness and of what a hand reaches',
      change: (job) =>
        withPlacement({ reachableByHand: undefined })(withHarness({ loomed: undefined, slack: undefined })(job)),
      finds: [
        {
          at: 'harness',
          severity: 'advise',
          what: 'Not recorded of the harness: whether it is loomed, its slack.',
          whatToDo: 'Look, and record what you see.',
        },
        {
          at: 'device',
          severity: 'advise',
          what: 'Not recorded of the device: whether a hand reaches it.',
          whatToDo: 'Look, and record what you see.',
        },
      ],
    },
  ],
};
