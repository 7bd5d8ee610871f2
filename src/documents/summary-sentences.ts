import type { Evidence } from '../evidence/evidence.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import type { Writing } from '../words/writing.ts';
import { provenAsJoined } from './proven-as-joined.ts';
import { colourOf, vehicleInWords, wirePlace } from './wire-words.ts';

/** What was done, in a few plain sentences written from the record; what the record does not say is not said. */
export function summarySentences(
  job: Job,
  profile: DeviceProfile | null,
  evidence: Evidence,
  writing: Writing,
): readonly string[] {
  const { sentences } = writing;
  const vehicle = vehicleInWords(job.vehicle, writing);
  if (job.identity.visit === 'wasted visit')
    return [sentences.nothingDone(vehicle), job.identity.wastedBecause ?? sentences.nothingDoneUnknown];
  const device = profile?.name ?? job.device?.profile ?? null;
  return [
    sentences.done(job.identity.visit, { device, vehicle, removedSerial: removedSerial(job) }),
    ...(isRemoval(job) ? [] : [...placeSentence(job, writing), ...jointSentences(job, evidence, writing)]),
    ...(device === null || isRemoval(job) ? [] : [workingSentence(job, writing)]),
    ...afterSentences(job, writing),
  ];
}

/** Whether the device was taken out, so that nothing on the vehicle is joined to it any more. */
export function isRemoval(job: Job): boolean {
  return job.identity.visit === 'removal';
}

function removedSerial(job: Job): string | null {
  return job.device?.removedSerial ?? (isRemoval(job) ? (job.device?.serial ?? null) : null);
}

function placeSentence({ placement }: Job, { sentences, terms, whole }: Writing): readonly string[] {
  if (placement === undefined) return [];
  return [
    sentences.sits({
      zone: terms.zones[placement.zone][1],
      surface: placement.surface,
      fixing: placement.fixing === 'loose' ? null : terms.fixings[placement.fixing],
      points: (placement.fixingPoints ?? 0) === 0 ? null : whole(placement.fixingPoints ?? 0),
    }),
  ];
}

function jointSentences(job: Job, evidence: Evidence, writing: Writing): readonly string[] {
  const { sentences, terms } = writing;
  const made = job.connections ?? [];
  if (made.length === 0) return [];
  const open = made.filter((each) => !provenAsJoined(each, evidence)).map((each) => terms.leads[each.lead]);
  const fuses = made.flatMap((each) =>
    each.fuse === undefined
      ? []
      : [
          {
            amperes: writing.decimal(each.fuse.ratingAmperes),
            lead: terms.leads[each.lead],
            distance: writing.length(each.fuse.distanceMillimetres),
          },
        ],
  );
  return [
    sentences.joined(
      made.map((each) => {
        const point = job.probePoints?.find((one) => one.name === each.point);
        const place = wirePlace(point, writing) || (each.lead === 'ground' ? (job.ground?.where ?? '') : '');
        return { lead: each.lead, wire: each.lead === 'ground' && place !== '' ? null : colourOf(point), place };
      }),
    ),
    open.length === 0 ? sentences.allProven : sentences.notProven(open),
    ...(fuses.length === 0 ? [] : [sentences.fuses(fuses)]),
  ];
}

function workingSentence({ device }: Job, { sentences }: Writing): string {
  if (device?.active === undefined) return sentences.worksUnknown;
  return device.active ? sentences.works(device.lampSeen ?? null) : sentences.worksNot;
}

function afterSentences(job: Job, { sentences }: Writing): readonly string[] {
  if (job.after === undefined) return [];
  const before = { lamps: job.before?.warningLamps ?? [], faults: job.before?.functionsNotWorking ?? [] };
  const lamps = job.after.warningLamps;
  const faults = job.after.functionsNotWorking;
  const split = (after: readonly string[], found: readonly string[]) => ({
    fresh: after.filter((each) => !found.includes(each)),
    old: after.filter((each) => found.includes(each)),
  });
  const lamp = split(lamps, before.lamps);
  const fault = split(faults, before.faults);
  return [
    ...(lamps.length + faults.length === 0 ? [sentences.afterClean] : []),
    ...(lamp.fresh.length === 0 ? [] : [sentences.freshLamps(lamp.fresh)]),
    ...(fault.fresh.length === 0 ? [] : [sentences.freshFaults(fault.fresh)]),
    ...(lamp.old.length === 0 ? [] : [sentences.oldLamps(lamp.old)]),
    ...(fault.old.length === 0 ? [] : [sentences.oldFaults(fault.old)]),
  ];
}
