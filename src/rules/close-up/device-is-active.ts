import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The device is active before the fitter leaves.',
  why: 'A device that does not report is a second visit.',
  says: {
    'not active': () => ({
      what: 'The device is not active.',
      whatToDo: 'Have it activated while still at the vehicle, or write down who does it and when.',
    }),
    'not recorded': () => ({
      what: 'Whether the device is active is not recorded.',
      whatToDo: 'Ask whoever receives its reports, and record the answer.',
    }),
  },
};

/** The device is active before the fitter leaves. */
export const deviceIsActive = defineRule({
  id: 'device-is-active',
  group: 'close-up',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { device } = workDone(job);
    if (device === undefined || device.active === true || job.identity.visit === 'removal') return [];
    return device.active === false
      ? [{ at: 'device', says: 'not active' }]
      : [{ at: 'device', says: 'not recorded', severity: 'advise' }];
  },
  examples: [
    {
      name: 'active',
      change: (job) => ({ ...job, device: { profile: exampleProfile.id, ...job.device, active: true } }),
      finds: [],
    },
    {
      name: 'not active',
      change: (job) => ({ ...job, device: { profile: exampleProfile.id, ...job.device, active: false } }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device is not active.',
          whatToDo: 'Have it activated while still at the vehicle, or write down who does it and when.',
        },
      ],
    },
    {
      name: 'not recorded',
      change: (job) => ({ ...job, device: { profile: exampleProfile.id, ...job.device, active: undefined } }),
      finds: [
        {
          at: 'device',
          severity: 'advise',
          what: 'Whether the device is active is not recorded.',
          whatToDo: 'Ask whoever receives its reports, and record the answer.',
        },
      ],
    },
  ],
});
