import { isSmaller, writeGauge } from '../../electrics/smallest-conductor.ts';
import type { JobInput } from '../../records/job.ts';
import type { Gauge } from '../../records/probe-point.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

const withWire = (name: string, gauge: Gauge) => (job: JobInput) => ({
  ...job,
  probePoints: (job.probePoints ?? []).map((point) => (point.name === name ? { ...point, gauge } : point)),
});

/** The vehicle wire that is tapped is no thinner than the lead it feeds. */
export const wireIsNoSmallerThanTheLeadItFeeds: Rule = {
  id: 'wire-is-no-smaller-than-the-lead-it-feeds',
  group: 'wiring',
  severity: 'reason',
  summary: 'The vehicle wire that is tapped is no thinner than the lead it feeds.',
  why: 'A thin wire is often a signal, not a supply; its own fuse and gauge were chosen without the device.',
  source: 'common practice, no source; AWG sizes: ASTM B258; smallest conductor decides: FAA AC 43.13-1B 11-48',
  check: ({ job, profile }) => {
    const { connections, probePoints } = workDone(job);
    return (connections ?? []).flatMap((made): readonly RuleHit[] => {
      const lead = made.gauge ?? profile?.leadGauge;
      const wire = probePoints?.find((point) => point.name === made.point)?.gauge;
      if (lead === undefined || wire === undefined || !isSmaller(wire, lead)) return [];
      return [
        {
          at: made.lead,
          what: `The ${made.lead} lead (${writeGauge(lead)}) is fed by ${made.point}, a wire of only ${writeGauge(wire)}.`,
          whatToDo:
            made.lead === 'ignition'
              ? 'A lead that only senses may hang on it; make sure that it is a feed and no signal.'
              : 'Choose a thicker wire, best one of the ignition switch or the fuse box.',
          // an ignition lead only senses: it draws next to nothing
          ...(made.lead === 'ignition' ? { severity: 'advise' as const } : {}),
        },
      ];
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
};
