import type { Book } from '../records/book.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import { vehicleInWords, wireColour, writeLength } from './write-facts.ts';

function list(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** What was done, in three to five plain sentences written from the record. */
export function summarySentences(job: Job, profile: DeviceProfile | null, book: Book): readonly string[] {
  const vehicle = vehicleInWords(job.vehicle);
  if (job.identity.visit === 'wasted visit')
    return [`Nothing was done to the ${vehicle}.`, job.identity.wastedBecause ?? 'The work could not be carried out.'];
  const device = profile?.name ?? job.device?.profile ?? 'device';
  const verb =
    job.identity.visit === 'removal'
      ? 'taken out of'
      : job.identity.visit === 'service call'
        ? 'serviced in'
        : job.identity.visit === 'swap'
          ? 'exchanged in'
          : 'fitted to';
  const open = job.identity.visit === 'removal';
  const place =
    job.placement === undefined || open
      ? ''
      : ` It sits at the ${job.placement.zone}, on the ${job.placement.surface}, held by ${job.placement.fixing}.`;
  const joints = (job.connections ?? []).map((made) => {
    const point = job.probePoints?.find((each) => each.name === made.point);
    return `${made.lead} to the ${wireColour(point)}${point?.colour === undefined || made.method === 'ring terminal' ? '' : ' wire'}`;
  });
  const fuses = (job.connections ?? []).flatMap((made) =>
    made.fuse === undefined
      ? []
      : [
          `${made.fuse.ratingAmperes} A in the ${made.lead} lead, ${writeLength(made.fuse.distanceMillimetres, book)} from the joint`,
        ],
  );
  const works =
    job.device?.active === true
      ? `The device works${job.device.lampSeen === undefined ? '' : `; its lamp shows ${job.device.lampSeen}`}.`
      : job.device?.active === false
        ? 'The device was not seen working.'
        : 'Whether the device works is not recorded.';
  const found = job.before?.functionsNotWorking ?? [];
  const faults = (job.after?.functionsNotWorking ?? []).filter((each) => found.includes(each));
  const fresh = (job.after?.functionsNotWorking ?? []).filter((each) => !found.includes(each));

  return [
    `${article(device)} was ${verb} the ${vehicle}.${place}`,
    ...(joints.length === 0 || open ? [] : [`Its leads are joined: ${list(joints)}.`]),
    ...(fuses.length === 0 ? [] : [`Fuses: ${list(fuses)}.`]),
    works,
    ...(fresh.length === 0 ? [] : [`Not working after the visit, and not noted before it: ${list(fresh)}.`]),
    ...(faults.length === 0 ? [] : [`Not working before and after the visit: ${list(faults)}.`]),
  ];
}

function article(name: string): string {
  return `${/^[AEIOU]/.test(name) ? 'An' : 'A'} ${name}`;
}
