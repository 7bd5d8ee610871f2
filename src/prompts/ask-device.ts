import type { Job } from '../records/job.ts';
import { isFitted, isWorked } from './kinds-of-visit.ts';
import type { Question } from './question.ts';

type Device = NonNullable<Job['device']>;
const digits = (text: string) => (/^[\d -]{14,22}$|^$/.test(text) ? null : 'Type the 15 digits on the label.');

/** Which device: its profile and numbers; on a swap or removal, also the one taken out. */
export const deviceQuestion: Question = {
  id: 'device',
  applies: isWorked,
  ask: async (job, ask, around) => {
    const profile = await ask.choose(
      'Device',
      around.devices.map(({ id, name }) => ({ value: id, name })),
      around.devices[0]?.id ?? '',
    );
    const known = around.devices.find((each) => each.id === profile);
    const visit = job.identity.visit;
    const removed = visit === 'swap' || visit === 'removal' ? await ask.text('Serial of the device taken out', '') : '';
    const stays = visit !== 'removal';
    const serial = stays ? await ask.text('Serial', '') : '';
    const imei = stays && known?.hasImei === true ? await ask.text('IMEI', '', digits) : '';
    const card =
      stays && known?.hasImei === true
        ? await ask.text('Number of its card (ICCID; empty when there is none to read)', '', (text) =>
            /^([\d -]{18,30})?$/.test(text) ? null : 'Type the 18 to 22 digits on the card, or nothing.',
          )
        : '';
    const device: Device = {
      profile,
      ...(serial === '' ? {} : { serial }),
      ...(imei === '' ? {} : { imei }),
      ...(card === '' ? {} : { iccid: card }),
      ...(removed === '' ? {} : { removedSerial: removed }),
    };
    return { ...job, device };
  },
};

/** Prove: what the device's own lamp shows, and whether it works. */
export const deviceWorks: Question = {
  id: 'device-works',
  applies: (job) => job.device !== undefined && (isFitted(job) || job.identity.visit === 'service call'),
  ask: async (job, ask, around) => {
    const usual = around.devices.find((each) => each.id === job.device?.profile)?.lampWhenWell ?? '';
    const lampSeen = await ask.text('Its lamp shows', usual);
    const active = await ask.decide('Does it work: seen active, or confirmed by whoever runs it?');
    return job.device === undefined
      ? job
      : { ...job, device: { ...job.device, ...(lampSeen === '' ? {} : { lampSeen }), active } };
  },
};
