import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { workDone } from '../work-done.ts';

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

const words = {
  summary: () => 'The lamp of the device shows what its profile says when all is well.',
  why: 'A lit lamp is the first proof of the whole circuit.',
  says: {
    'not recorded': (lamp: { well: string }) => ({
      what: `What the lamp showed is not recorded; it should show "${lamp.well}".`,
      whatToDo: 'Look at the lamp with the key on and record it.',
    }),
    'shows something else': (lamp: { seen: string; well: string }) => ({
      what: `The lamp showed "${lamp.seen}"; it should show "${lamp.well}".`,
      whatToDo: 'Check supply, ignition and ground at the device, then reception, before closing up.',
    }),
  },
};

/** The lamp of the device shows what its profile says when all is well. */
export const deviceLampAsTheProfileSays = defineRule({
  id: 'device-lamp-as-the-profile-says',
  group: 'close-up',
  severity: 'reason',
  source: "the device's own profile; common practice, no source",
  words,
  check: ({ job, profile }) => {
    const { device } = workDone(job);
    const well = profile?.lampWhenWell;
    if (device === undefined || well === undefined || job.identity.visit === 'removal') return [];
    const seen = device.lampSeen;
    if (seen === undefined) return [{ at: 'device', says: 'not recorded', figures: { well } }];
    return plain(seen) === plain(well) ? [] : [{ at: 'device', says: 'shows something else', figures: { seen, well } }];
  },
  examples: [
    {
      name: 'lamp as it should be',
      change: (job) => ({ ...job, device: { profile: exampleProfile.id, ...job.device, lampSeen: 'Green, steady' } }),
      finds: [],
      facts: { profile: { ...exampleProfile, lampWhenWell: 'green, steady' } },
    },
    {
      name: 'red lamp',
      change: (job) => ({ ...job, device: { profile: exampleProfile.id, ...job.device, lampSeen: 'red, blinking' } }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The lamp showed "red, blinking"; it should show "green, steady".',
          whatToDo: 'Check supply, ignition and ground at the device, then reception, before closing up.',
        },
      ],
      facts: { profile: { ...exampleProfile, lampWhenWell: 'green, steady' } },
    },
    {
      name: 'lamp not looked at',
      change: (job) => ({ ...job, device: { profile: exampleProfile.id, ...job.device, lampSeen: undefined } }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'What the lamp showed is not recorded; it should show "green, steady".',
          whatToDo: 'Look at the lamp with the key on and record it.',
        },
      ],
      facts: { profile: { ...exampleProfile, lampWhenWell: 'green, steady' } },
    },
  ],
});
