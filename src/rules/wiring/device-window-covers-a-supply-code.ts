import { coveredSupplyCodes, supplyCodes } from '../../electrics/supply-codes.ts';
import { exampleProfile } from '../example-profile.ts';
import { nominalVolts } from '../nominal-volts.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device's supply window covers one of the standard ranges of the vehicle's system. */
export const deviceWindowCoversASupplyCode: Rule = {
  id: 'device-window-covers-a-supply-code',
  group: 'wiring',
  severity: 'reason',
  summary: "The device's supply window covers one of the standard ranges of the vehicle's system.",
  why: 'A device made for less meets volts in a normal life (16 V on 12 V, 32 V on 24 V systems) that today’s readings do not show.',
  source: 'ISO 16750-2, tables 1 and 2 (figures from memory and a quotation of the 2010 edition)',
  check: (facts) => {
    const { profile } = facts;
    if (profile === null || workDone(facts.job).device === undefined) return [];
    const system = nominalVolts(facts);
    if (coveredSupplyCodes(profile.supplyVoltsMin, profile.supplyVoltsMax, system).length > 0) return [];
    const codes = supplyCodes
      .filter((each) => each.systemVolts === system)
      .map((each) => `${each.code} ${each.voltsMin} to ${each.voltsMax} V`);
    return [
      {
        at: 'device',
        what: `${profile.name} is made for ${profile.supplyVoltsMin} to ${profile.supplyVoltsMax} V, which covers no range of a ${system} V system (${codes.join(', ')}).`,
        whatToDo: 'Fit a device made for this system, or a converter, or write why the maker allows it.',
      },
    ];
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
};
