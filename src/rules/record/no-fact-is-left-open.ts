import { type DeviceLead, deviceLeads } from '../../records/connection.ts';
import type { Job } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import type { JobFacts } from '../job-facts.ts';
import { withConnection, withHarness, withPlacement } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** A fact that no other rule asks for. */
export type OpenFact =
  | 'how it was stripped'
  | 'whether it is tied'
  | 'whether its fuse is taped and tied'
  | 'whether it stands on bare metal'
  | 'whether it is shakeproof'
  | 'whether it is loomed'
  | 'its slack'
  | 'whether a head or knee may strike it'
  | 'whether tools reach it'
  | 'whether a hand reaches it'
  | 'what is above its antenna';

/** A recorded section with such facts; a fact not recorded is undefined. */
type Section = {
  readonly at: DeviceLead | 'ground point' | 'harness' | 'device';
  readonly facts: readonly (readonly [OpenFact, unknown])[];
};

/** Whether a section is a lead's joint. */
const isLead = (at: Section['at']): at is DeviceLead => (deviceLeads as readonly string[]).includes(at);

function sections(job: Job, profile: JobFacts['profile']): readonly Section[] {
  const { connections, harness, placement, ground } = workDone(job);
  const joints = (connections ?? []).map((made): Section => {
    const unstripped = made.method === 'connector pin' || made.method === 'plug-in fuse tap';
    return {
      at: made.lead,
      facts: [
        ['how it was stripped', unstripped || made.stripped],
        ['whether it is tied', made.tied],
        ['whether its fuse is taped and tied', made.fuse === undefined || made.fuse.tapedAndTied],
      ],
    };
  });
  const groundSection: Section = {
    at: 'ground point',
    facts: [
      ['whether it stands on bare metal', ground?.bareMetal],
      ['whether it is shakeproof', ground?.shakeproof],
    ],
  };
  const harnessSection: Section = {
    at: 'harness',
    facts: [
      ['whether it is loomed', harness?.loomed],
      ['whether it is tied', harness?.tied],
      ['its slack', harness?.slack],
    ],
  };
  const deviceSection: Section = {
    at: 'device',
    facts: [
      ['whether a head or knee may strike it', placement?.inHeadStrikeArea],
      ['whether tools reach it', placement?.reachableWithTools],
      ['whether a hand reaches it', placement?.reachableByHand],
      ['what is above its antenna', profile?.hasAntenna === false ? 'no antenna' : placement?.above],
    ],
  };
  return [
    ...joints,
    ...(ground === undefined ? [] : [groundSection]),
    ...(harness === undefined ? [] : [harnessSection]),
    ...(placement === undefined ? [] : [deviceSection]),
  ];
}

const words = {
  summary: () => 'What the rules rest on is recorded: joints, ground, harness and place.',
  why: 'A rule finds nothing wrong in what was never looked at; the sheet would claim more than was seen.',
  says: {
    'left open': (section: { at: Section['at']; facts: readonly OpenFact[] }, voice: Voice) => ({
      what: `Not recorded of the ${isLead(section.at) ? `${voice.lead(section.at)} lead` : section.at}: ${section.facts.join(', ')}.`,
      whatToDo: 'Look, and record what you see.',
    }),
  },
};

/** What the rules rest on is recorded: a tick that nobody set proves nothing. */
export const noFactIsLeftOpen = defineRule({
  id: 'no-fact-is-left-open',
  group: 'record',
  severity: 'advise',
  source: 'common practice, no source',
  words,
  check: ({ job, profile }) =>
    sections(job, profile).flatMap(({ at, facts: all }) => {
      const facts = all.flatMap(([fact, value]) => (value === undefined ? [fact] : []));
      return facts.length === 0 ? [] : [{ at, says: 'left open', figures: { at, facts } }];
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
});
