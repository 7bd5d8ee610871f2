import type { Electrics } from '../electrics/electrics.ts';
import type { Job } from '../records/job.ts';
import type { Writing } from '../words/writing.ts';

type Row = { readonly name: string; readonly value: string };

/** The electrics of a job as rows; only what the record lets one work out. */
export function electricsRows(electrics: Electrics, job: Job, writing: Writing): readonly Row[] {
  const { sentences } = writing;
  const words = sentences.electrics;
  const least = electrics.atDevice.toSorted((one, other) => one.millivolts - other.millivolts)[0];
  const row = (name: string, value: string | null): readonly Row[] => (value === null ? [] : [{ name, value }]);
  return [
    ...row(
      words.lowest,
      least === undefined
        ? null
        : words.lowestValue(writing.millivolts(least.millivolts), writing.speech(job.vehicle).where(least.key)),
    ),
    ...row(
      words.window,
      electrics.supplyMillivoltsMin === null || electrics.supplyMillivoltsMax === null
        ? null
        : words.windowValue(
            writing.millivolts(electrics.supplyMillivoltsMin),
            writing.millivolts(electrics.supplyMillivoltsMax),
          ),
    ),
    ...row(words.drop, electrics.leadDropMillivolts === null ? null : dropText(electrics.leadDropMillivolts, writing)),
    ...row(words.groundDrop, groundDrop(electrics, writing)),
    ...row(
      words.fuseMax,
      electrics.fuseAmperesMax === null || job.connections === undefined
        ? null
        : `${writing.decimal(electrics.fuseAmperesMax)} A`,
    ),
    ...row(
      words.standing,
      electrics.standingDays === null
        ? null
        : words.standingValue(
            writing.whole(electrics.standingDays),
            electrics.asleepMilliamps === null ? null : writing.decimal(electrics.asleepMilliamps),
            !electrics.vehicleAsleepMeasured,
          ),
    ),
  ];
}

// a drop is small: in volts its figures would be lost
function dropText(millivolts: number, writing: Writing): string {
  return `${writing.decimal(Math.round(millivolts))} mV`;
}

function groundDrop(electrics: Electrics, writing: Writing): string | null {
  if (electrics.groundDropMillivolts === null) return null;
  const drop = dropText(electrics.groundDropMillivolts, writing);
  return electrics.groundTestMilliamps === null
    ? drop
    : writing.sentences.atCurrent(drop, writing.whole(electrics.groundTestMilliamps));
}
