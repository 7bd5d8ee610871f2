import { isSmaller } from '../../electrics/smallest-conductor.ts';
import type { DeviceLead } from '../../records/connection.ts';
import type { JobInput } from '../../records/job.ts';
import type { Gauge } from '../../records/probe-point.ts';
import { defineRule } from '../define-rule.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const withWire = (name: string, gauge: Gauge) => (job: JobInput) => ({
  ...job,
  probePoints: (job.probePoints ?? []).map((point) => (point.name === name ? { ...point, gauge } : point)),
});

type Thin = { readonly lead: DeviceLead; readonly own: Gauge; readonly point: string; readonly wire: Gauge };

const thinWire = ({ lead, own, point, wire }: Thin, voice: Voice) =>
  `The ${voice.lead(lead)} lead (${voice.gauge(own)}) is fed by ${point}, a wire of only ${voice.gauge(wire)}.`;

const words = {
  summary: () => 'The vehicle wire that is tapped is no thinner than the lead it feeds.',
  why: 'A thin wire is often a signal, not a supply; its own fuse and gauge were chosen without the device.',
  says: {
    'feeds too thick a lead': (joint: Thin, voice: Voice) => ({
      what: thinWire(joint, voice),
      whatToDo: 'Choose a thicker wire, best one of the ignition switch or the fuse box.',
    }),
    'sense lead only': (joint: Thin, voice: Voice) => ({
      what: thinWire(joint, voice),
      whatToDo: 'A lead that only senses may hang on it; make sure that it is a feed and no signal.',
    }),
  },
};

/** The vehicle wire that is tapped is no thinner than the lead it feeds. */
export const wireIsNoSmallerThanTheLeadItFeeds = defineRule({
  id: 'wire-is-no-smaller-than-the-lead-it-feeds',
  group: 'wiring',
  severity: 'reason',
  source: 'common practice, no source; AWG sizes: ASTM B258; smallest conductor decides: FAA AC 43.13-1B 11-48',
  words,
  check: ({ job, profile }) => {
    const { connections, probePoints } = workDone(job);
    return (connections ?? []).flatMap(({ lead, point = '', gauge }): readonly Hit<typeof words>[] => {
      const own = gauge ?? profile?.leadGauge;
      const wire = probePoints?.find((each) => each.name === point)?.gauge;
      if (own === undefined || wire === undefined || !isSmaller(wire, own)) return [];
      const figures = { lead, own, point, wire };
      // an ignition lead only senses: it draws next to nothing
      return lead === 'ignition'
        ? [{ at: lead, says: 'sense lead only', figures, severity: 'advise' }]
        : [{ at: lead, says: 'feeds too thick a lead', figures }];
    });
  },
  examples: [
    { name: '12 AWG feeding 18 AWG', change: (job) => job, finds: [] },
    { name: '18 AWG feeding 18 AWG', change: withWire('P1', { awg: 18 }), finds: [] },
    {
      name: '22 AWG feeding the supply lead of 18 AWG',
      change: withWire('P1', { awg: 22 }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The supply lead (18 AWG) is fed by P1, a wire of only 22 AWG.',
          whatToDo: 'Choose a thicker wire, best one of the ignition switch or the fuse box.',
        },
      ],
    },
    {
      name: '0.35 mm² feeding the ignition lead',
      change: withWire('P2', { squareMillimetres: 0.35 }),
      finds: [
        {
          at: 'ignition',
          severity: 'advise',
          what: 'The ignition lead (18 AWG) is fed by P2, a wire of only 0.35 mm².',
          whatToDo: 'A lead that only senses may hang on it; make sure that it is a feed and no signal.',
        },
      ],
    },
  ],
});
