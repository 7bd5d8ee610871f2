import { coveredSupplyCodes, supplyCodes } from '../../electrics/supply-codes.ts';
import { nominalVolts } from '../../records/nominal-volts.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

type SupplyCode = (typeof supplyCodes)[number];

const words = {
  summary: () => "The device's supply window covers one of the standard ranges of the vehicle's system.",
  why: 'A device made for less meets volts in a normal life (16 V on 12 V, 32 V on 24 V systems) that today’s readings do not show.',
  says: {
    'covers none': (
      device: { name: string; least: number; most: number; system: 12 | 24; codes: readonly SupplyCode[] },
      voice: Voice,
    ) => ({
      what: `${device.name} is made for ${voice.decimal(device.least)} to ${voice.decimal(device.most)} V, which covers no range of a ${device.system} V system (${device.codes.map((each) => `${each.code} ${voice.decimal(each.voltsMin)} to ${voice.decimal(each.voltsMax)} V`).join(', ')}).`,
      whatToDo: 'Fit a device made for this system, or a converter, or write why the maker allows it.',
    }),
  },
};

/** The device's supply window covers one of the standard ranges of the vehicle's system. */
export const deviceWindowCoversASupplyCode = defineRule({
  id: 'device-window-covers-a-supply-code',
  group: 'wiring',
  severity: 'reason',
  source: 'ISO 16750-2, tables 1 and 2 (figures from memory and a quotation of the 2010 edition)',
  words,
  check: (facts) => {
    const { profile } = facts;
    if (profile === null || workDone(facts.job).device === undefined) return [];
    const system = nominalVolts(facts.job);
    const { name, supplyVoltsMin: least, supplyVoltsMax: most } = profile;
    if (coveredSupplyCodes(least, most, system).length > 0) return [];
    const codes = supplyCodes.filter((each) => each.systemVolts === system);
    return [{ at: 'device', says: 'covers none', figures: { name, least, most, system, codes } }];
  },
  examples: [
    { name: '8 to 32 V on 12 V', change: (job) => job, finds: [] },
    {
      name: '10.5 to 16 V on 12 V, code D',
      change: (job) => job,
      facts: { profile: { ...exampleProfile, supplyVoltsMin: 10.5, supplyVoltsMax: 16 } },
      finds: [],
    },
    {
      name: '9 to 15 V on 12 V',
      change: (job) => job,
      facts: { profile: { ...exampleProfile, supplyVoltsMin: 9, supplyVoltsMax: 15 } },
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'Example device is made for 9 to 15 V, which covers no range of a 12 V system (A 6 to 16 V, B 8 to 16 V, C 9 to 16 V, D 10.5 to 16 V).',
          whatToDo: 'Fit a device made for this system, or a converter, or write why the maker allows it.',
        },
      ],
    },
  ],
});
