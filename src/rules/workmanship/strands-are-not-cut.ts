import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { nickedStrandsMax } from '../nicked-strands-max.ts';
import { withConnection } from '../overlay.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Stripping cuts no strand and nicks no more than the table allows.',
  why: 'Cut strands take away cross-section and strength at the very place that bends most.',
  says: {
    cut: (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `Strands were cut in stripping for the ${voice.lead(joint.lead)} lead; none may be.`,
      whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
    }),
    'nicked, not counted': (joint: { lead: DeviceLead; allowed: number }, voice: Voice) => ({
      what: `Strands were nicked in stripping for the ${voice.lead(joint.lead)} lead, but not counted; ${joint.allowed} are allowed.`,
      whatToDo: 'Count the nicked strands and record them.',
    }),
    nicked: (joint: { lead: DeviceLead; nicked: number; allowed: number }, voice: Voice) => ({
      what: `${joint.nicked} strands were nicked in stripping for the ${voice.lead(joint.lead)} lead; ${joint.allowed} are allowed.`,
      whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
    }),
  },
};

/** Stripping cuts no strand and nicks no more than the table allows. */
export const strandsAreNotCut = defineRule({
  id: 'strands-are-not-cut',
  group: 'workmanship',
  severity: 'reason',
  source:
    'FAA AC 43.13-1B table 11-13 (copper: 24-14 AWG 2 nicked, 12-10 AWG 4, 8-4 AWG 6; none cut up to 10 AWG); aircraft practice, a strict yardstick',
  words,
  check: ({ job, profile }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly Hit<typeof words>[] => {
      const { lead, stripped, nickedStrands: nicked } = made;
      if (stripped === 'strands cut') return [{ at: lead, says: 'cut', figures: { lead } }];
      if (stripped !== 'strands nicked') return [];
      const allowed = nickedStrandsMax(made.gauge ?? profile?.leadGauge);
      if (nicked === undefined) return [{ at: lead, says: 'nicked, not counted', figures: { lead, allowed } }];
      return nicked <= allowed ? [] : [{ at: lead, says: 'nicked', figures: { lead, nicked, allowed } }];
    }),
  examples: [
    {
      name: 'two strands nicked in 18 AWG',
      change: withConnection('supply', { gauge: { awg: 18 }, stripped: 'strands nicked', nickedStrands: 2 }),
      finds: [],
    },
    {
      name: 'three strands nicked in 18 AWG',
      change: withConnection('supply', { gauge: { awg: 18 }, stripped: 'strands nicked', nickedStrands: 3 }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: '3 strands were nicked in stripping for the supply lead; 2 are allowed.',
          whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
        },
      ],
    },
    {
      name: 'strands cut',
      change: withConnection('ignition', { stripped: 'strands cut' }),
      finds: [
        {
          at: 'ignition',
          severity: 'reason',
          what: 'Strands were cut in stripping for the ignition lead; none may be.',
          whatToDo: 'Cut back to sound wire, strip with the die that fits, and make the joint again.',
        },
      ],
    },
    {
      name: 'nicked strands that nobody counted',
      change: withConnection('supply', { gauge: { awg: 18 }, stripped: 'strands nicked' }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'Strands were nicked in stripping for the supply lead, but not counted; 2 are allowed.',
          whatToDo: 'Count the nicked strands and record them.',
        },
      ],
    },
  ],
});
