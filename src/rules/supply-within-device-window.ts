import { workOutElectrics } from '../electrics/work-out-electrics.ts';
import { writeVolts } from '../quantities/millivolts.ts';
import { exampleProfile } from './example-profile.ts';
import type { Rule, RuleHit } from './rule.ts';

/** The volts at the device stay within its supply window, also while cranking. */
export const supplyWithinDeviceWindow: Rule = {
  id: 'supply-within-device-window',
  group: 'wiring',
  severity: 'block',
  summary: 'The volts at the device stay within its supply window, also while cranking.',
  why: 'Outside its window a device restarts, loses data or fails.',
  source: "the device maker's data, in devices.json; window codes: ISO 16750-2",
  check: ({ job, profile, book }) => {
    const { atDevice, supplyMillivoltsMin, supplyMillivoltsMax, crankMillivoltsMin } = workOutElectrics(
      job,
      profile,
      book,
    );
    return (job.identity.visit === 'wasted visit' ? [] : atDevice).flatMap(
      ({ key, millivolts }): readonly RuleHit[] => {
        const least = key === 'crank' ? crankMillivoltsMin : supplyMillivoltsMin;
        const low = least !== null && millivolts < least;
        const high = supplyMillivoltsMax !== null && millivolts > supplyMillivoltsMax;
        return low || high
          ? [
              {
                at: key,
                what: `The device sees ${writeVolts(millivolts)} V (${key}); it needs ${writeVolts(least ?? 0)} to ${writeVolts(supplyMillivoltsMax ?? 0)} V.`,
                whatToDo: 'Use a better feed, a shorter or thicker lead, or a converter.',
              },
            ]
          : [];
      },
    );
  },
  examples: [
    { name: '12.4 V at a device for 8 to 32 V', change: (job) => job, finds: [] },
    {
      name: 'cranking down to 5 V',
      change: (job) => ({
        ...job,
        probePoints: (job.probePoints ?? []).map((point) =>
          point.name === 'P1'
            ? {
                ...point,
                readings: (point.readings ?? []).map((each) => (each.key === 'crank' ? { ...each, volts: 5 } : each)),
              }
            : point,
        ),
      }),
      facts: { profile: { ...exampleProfile, crankVoltsMin: 6.5 } },
      finds: ['crank'],
    },
  ],
};
