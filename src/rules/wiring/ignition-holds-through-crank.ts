import { millivoltsFromVolts } from '../../quantities/millivolts.ts';
import { cranks } from '../../records/cranks.ts';
import type { JobInput } from '../../records/job.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** An example's change that replaces the volts of a wire while cranking, or takes the reading away. */
const cranking = (name: string, volts: number | null) => (job: JobInput) => ({
  ...job,
  probePoints: (job.probePoints ?? []).map((point) =>
    point.name === name
      ? {
          ...point,
          readings: (point.readings ?? []).flatMap((each) =>
            each.key !== 'crank' ? [each] : volts === null ? [] : [{ ...each, volts }],
          ),
        }
      : point,
  ),
});

const words = {
  summary: () => 'The ignition wire stays above what the device takes for "on" while the engine cranks.',
  why: 'A wire that drops while cranking (terminal 75 or X) ends a journey at every start, and some devices restart.',
  says: {
    'not read': (wire: { point: string }) => ({
      what: `${wire.point} was not read while cranking.`,
      whatToDo: `Read ${wire.point} while the starter turns, with the meter holding its lowest value; nobody near moving parts.`,
    }),
    falls: (wire: { point: string; least: number; needed: number }, voice: Voice) => ({
      what: `${wire.point} falls to ${voice.volts(wire.least)} while cranking; the device takes less than ${voice.volts(wire.needed)} for "off".`,
      whatToDo: 'Join the lead to a wire that holds (terminal 15 at the ignition switch).',
    }),
    'battery falls too': (wire: { point: string; least: number; needed: number; battery: number }, voice: Voice) => ({
      what: `${wire.point} falls to ${voice.volts(wire.least)} while cranking; the device takes less than ${voice.volts(wire.needed)} for "off", and the battery itself falls to ${voice.volts(wire.battery)}.`,
      whatToDo: 'No wire can hold more than the battery does: have the battery tested, then read again.',
    }),
  },
};

/** The ignition wire stays above what the device takes for "on" while the engine cranks. */
export const ignitionHoldsThroughCrank = defineRule({
  id: 'ignition-holds-through-crank',
  group: 'wiring',
  severity: 'block',
  source: "DIN 72552 (15 stays, X and 75 are dropped while cranking); the device maker's data for the threshold",
  words,
  check: ({ job, profile, evidence }) => {
    const { connections, probePoints } = workDone(job);
    const lead = connections?.find((made) => made.lead === 'ignition');
    const wire = probePoints?.find((each) => each.name === lead?.point);
    if (wire === undefined || profile === null || !cranks(job.vehicle)) return [];
    const point = wire.name;
    const read = wire.readings
      .filter((each) => each.key === 'crank' && (each.reference === 'chassis' || each.reference === 'battery negative'))
      .map((each) => millivoltsFromVolts(each.volts));
    if (read.length === 0) return [{ at: point, says: 'not read', figures: { point }, severity: 'reason' }];
    const least = Math.min(...read);
    const needed = millivoltsFromVolts(profile.ignitionVoltsMin);
    if (least >= needed) return [];
    const battery = evidence.supply.crank?.millivolts;
    if (battery !== undefined && battery < needed)
      return [{ at: point, says: 'battery falls too', figures: { point, least, needed, battery }, severity: 'reason' }];
    return [{ at: point, says: 'falls', figures: { point, least, needed } }];
  },
  examples: [
    { name: '10.3 V while cranking', change: (job) => job, finds: [] },
    { name: '7.0 V where 7.0 V are needed', change: cranking('P2', 7), finds: [] },
    {
      name: 'nothing while cranking',
      change: cranking('P2', 0),
      finds: [
        {
          at: 'P2',
          severity: 'block',
          what: 'P2 falls to 0.00 V while cranking; the device takes less than 7.00 V for "off".',
          whatToDo: 'Join the lead to a wire that holds (terminal 15 at the ignition switch).',
        },
      ],
    },
    {
      name: 'not read while cranking',
      change: cranking('P2', null),
      finds: [
        {
          at: 'P2',
          severity: 'reason',
          what: 'P2 was not read while cranking.',
          whatToDo:
            'Read P2 while the starter turns, with the meter holding its lowest value; nobody near moving parts.',
        },
      ],
    },
    {
      name: 'not read on a hybrid, which does not crank',
      change: (job) => ({ ...cranking('P2', null)(job), vehicle: { ...job.vehicle, drive: 'hybrid' } }),
      finds: [],
    },
    {
      name: 'a battery that falls below the threshold itself',
      change: (job) => ({
        ...cranking('P2', 6.4)(job),
        supply: (job.supply ?? []).map((each) => (each.key === 'crank' ? { ...each, volts: 6.5 } : each)),
      }),
      facts: { profile: exampleProfile },
      finds: [
        {
          at: 'P2',
          severity: 'reason',
          what: 'P2 falls to 6.40 V while cranking; the device takes less than 7.00 V for "off", and the battery itself falls to 6.50 V.',
          whatToDo: 'No wire can hold more than the battery does: have the battery tested, then read again.',
        },
      ],
    },
  ],
});
