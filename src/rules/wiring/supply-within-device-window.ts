import type { Electrics } from '../../electrics/electrics.ts';
import { workOutElectrics } from '../../electrics/work-out-electrics.ts';
import type { JobInput } from '../../records/job.ts';
import type { KeyPosition } from '../../records/wire-role.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import type { JobFacts } from '../job-facts.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const cranking = (volts: number | null) => (job: JobInput) => ({
  ...job,
  probePoints: (job.probePoints ?? []).map((point) =>
    point.name === 'P1'
      ? {
          ...point,
          readings: (point.readings ?? []).flatMap((each) =>
            each.key !== 'crank' ? [each] : volts === null ? [] : [{ ...each, volts }],
          ),
        }
      : point,
  ),
});

const betterFeed =
  'Use a better feed, a shorter or thicker lead, or a converter; have the battery tested if it is low itself.';

/** Each key position that was read on the supply wire. */
function outside(electrics: Electrics): readonly Hit<typeof words>[] {
  return electrics.atDevice.flatMap(({ key, millivolts, millivoltsMax }): readonly Hit<typeof words>[] => {
    const least = key === 'crank' ? electrics.crankMillivoltsMin : electrics.supplyMillivoltsMin;
    const most = electrics.supplyMillivoltsMax;
    const hits: Hit<typeof words>[] = [];
    if (least !== null && millivolts < least)
      hits.push(
        key === 'crank'
          ? { at: key, says: 'too low in crank', figures: { millivolts, least } }
          : { at: key, says: 'too low', figures: { millivolts, key, least } },
      );
    if (most !== null && millivoltsMax > most)
      hits.push({ at: key, says: 'too high', figures: { millivolts: millivoltsMax, key, most } });
    return hits;
  });
}

/** A device that must live through cranking, on a wire that was not read while cranking. */
function crankNotRead({ job, evidence, profile }: JobFacts, electrics: Electrics): readonly Hit<typeof words>[] {
  const lead = workDone(job).connections?.find((made) => made.lead === 'supply');
  const least = electrics.crankMillivoltsMin;
  if (lead === undefined || least === null || profile === null || !electrics.cranks) return [];
  if (electrics.atDevice.some((each) => each.key === 'crank')) return [];
  const battery = evidence.supply.crank?.millivolts;
  if (battery !== undefined && battery < least)
    return [{ at: 'crank', says: 'battery falls too low', figures: { millivolts: battery, least } }];
  return [{ at: 'crank', says: 'crank not read', figures: { least, point: lead.point ?? null }, severity: 'reason' }];
}

const words = {
  summary: () => 'The volts at the device stay within its supply window, also while cranking.',
  why: 'Outside its window a device restarts, loses data or fails.',
  says: {
    'too low': (device: { millivolts: number; key: Exclude<KeyPosition, 'crank'>; least: number }, voice: Voice) => ({
      what: `The device sees ${voice.volts(device.millivolts)} (${voice.key(device.key)}); it needs at least ${voice.volts(device.least)}.`,
      whatToDo: betterFeed,
    }),
    'too low in crank': (device: { millivolts: number; least: number }, voice: Voice) => ({
      what: `The device sees ${voice.volts(device.millivolts)} (${voice.key('crank')}); it needs at least ${voice.volts(device.least)} while the engine cranks.`,
      whatToDo: betterFeed,
    }),
    'too high': (device: { millivolts: number; key: KeyPosition; most: number }, voice: Voice) => ({
      what: `The device sees ${voice.volts(device.millivolts)} (${voice.key(device.key)}); it bears ${voice.volts(device.most)} at most.`,
      whatToDo: 'Take it off at once; fit a device for this system, or a converter.',
    }),
    'battery falls too low': (battery: { millivolts: number; least: number }, voice: Voice) => ({
      what: `The battery falls to ${voice.volts(battery.millivolts)} while cranking; the device needs at least ${voice.volts(battery.least)}, and no wire carries more than the battery.`,
      whatToDo: 'Have the battery tested and read again, or fit a device that lives through it.',
    }),
    'crank not read': (device: { least: number; point: string | null }, voice: Voice) => ({
      what: `The device must see ${voice.volts(device.least)} while the engine cranks, and its supply wire was not read then.`,
      whatToDo: `Read ${device.point ?? 'the supply wire'} while the starter turns, with the meter holding its lowest value (a plain display misses the first dip).`,
    }),
  },
};

/** The volts at the device stay within its supply window, also while cranking. */
export const supplyWithinDeviceWindow = defineRule({
  id: 'supply-within-device-window',
  group: 'wiring',
  severity: 'block',
  source:
    "the device maker's data, in devices.json; drop of the leads: FAA AC 43.13-1B chapter 11; window codes: ISO 16750-2",
  words,
  check: (facts) => {
    if (facts.job.identity.visit === 'wasted visit') return [];
    const electrics = workOutElectrics(facts.job, facts.profile, facts.book);
    return [...outside(electrics), ...crankNotRead(facts, electrics)];
  },
  examples: [
    { name: '12.4 V at a device for 8 to 32 V', change: (job) => job, finds: [] },
    {
      name: 'cranking down to 5 V',
      change: cranking(5),
      facts: { profile: { ...exampleProfile, crankVoltsMin: 6.5 } },
      finds: [
        {
          at: 'crank',
          severity: 'block',
          what: 'The device sees 4.99 V (crank); it needs at least 6.50 V while the engine cranks.',
          whatToDo:
            'Use a better feed, a shorter or thicker lead, or a converter; have the battery tested if it is low itself.',
        },
      ],
    },
    {
      name: 'cranking down to 5 V, where the device may restart',
      change: cranking(5),
      facts: { profile: exampleProfile },
      finds: [],
    },
    {
      name: 'not read while cranking, and the device must live through it',
      change: cranking(null),
      facts: { profile: { ...exampleProfile, crankVoltsMin: 6.5 } },
      finds: [
        {
          at: 'crank',
          severity: 'reason',
          what: 'The device must see 6.50 V while the engine cranks, and its supply wire was not read then.',
          whatToDo:
            'Read P1 while the starter turns, with the meter holding its lowest value (a plain display misses the first dip).',
        },
      ],
    },
    {
      name: 'not read while cranking on a hybrid, which does not crank',
      change: (job) => ({ ...cranking(null)(job), vehicle: { ...job.vehicle, drive: 'hybrid' } }),
      facts: { profile: { ...exampleProfile, crankVoltsMin: 6.5 } },
      finds: [],
    },
    {
      name: '14 V at a device that bears 13 V',
      change: (job) => job,
      facts: { profile: { ...exampleProfile, supplyVoltsMax: 13 } },
      finds: [
        {
          at: 'running',
          severity: 'block',
          what: 'The device sees 14.08 V (running); it bears 13.00 V at most.',
          whatToDo: 'Take it off at once; fit a device for this system, or a converter.',
        },
      ],
    },
    {
      name: 'a battery that falls to 6 V while cranking, and the wire was not read then',
      change: (job) => ({ ...cranking(null)(job), supply: [{ key: 'crank', volts: 6 }] }),
      facts: { profile: { ...exampleProfile, crankVoltsMin: 6.5 } },
      finds: [
        {
          at: 'crank',
          severity: 'block',
          what: 'The battery falls to 6.00 V while cranking; the device needs at least 6.50 V, and no wire carries more than the battery.',
          whatToDo: 'Have the battery tested and read again, or fit a device that lives through it.',
        },
      ],
    },
    {
      name: 'a wire at 12.4 V and a device that needs 12.5 V',
      change: (job) => job,
      facts: { profile: { ...exampleProfile, supplyVoltsMin: 12.5 } },
      finds: [
        {
          at: 'accessory',
          severity: 'block',
          what: 'The device sees 12.48 V (accessory); it needs at least 12.50 V.',
          whatToDo:
            'Use a better feed, a shorter or thicker lead, or a converter; have the battery tested if it is low itself.',
        },
        {
          at: 'on',
          severity: 'block',
          what: 'The device sees 12.39 V (on); it needs at least 12.50 V.',
          whatToDo:
            'Use a better feed, a shorter or thicker lead, or a converter; have the battery tested if it is low itself.',
        },
      ],
    },
  ],
});
