import { Problem } from '../problem.ts';
import { decimalText, lineAmountMinorUnits, millionths } from '../quantities/decimal.ts';
import { roundMinutes } from '../quantities/round-minutes.ts';
import { shareOut } from '../quantities/share-out.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import type { Trip } from '../records/trip.ts';
import { validOn } from './effective-rates.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import type { Setting } from './setting.ts';
import { workMinutes, workSpan, writeMinutes } from './work-minutes.ts';

function weights(trip: Trip, tripJobs: readonly Job[], timeZone: string): readonly bigint[] {
  const where = `trips/${trip.day}.json`;
  return trip.jobs.map((each, index) => {
    if (trip.shareBy === 'equally') return 1n;
    if (trip.shareBy === 'distance') {
      if (each.distance === undefined)
        throw new Problem(
          `The trip is shared by distance, and ${each.job} has none.`,
          `${where}, jobs[${index + 1}].distance`,
          'Give every job its distance, or share the trip equally.',
        );
      return millionths(each.distance);
    }
    const job = tripJobs.find((one) => one.id === each.job);
    // a share by time that leaves out an unfinished job would charge the others for it, and differently once it is finished
    if (job === undefined || workSpan(job, timeZone) === null)
      throw new Problem(
        `The trip is shared by time, and ${each.job} has no times yet.`,
        `${where}, jobs[${index + 1}]`,
        'Record when its work began and ended, or share the trip equally.',
      );
    return BigInt(workMinutes(job, timeZone));
  });
}

// this job's part of the whole, in the measure that the trip is shared by
function shareText(trip: Trip, weights: readonly bigint[], index: number, { words, decimal }: Setting): string {
  if (trip.shareBy === 'equally') return '';
  const own = weights[index] ?? 0n;
  const all = weights.reduce((sum, each) => sum + each, 0n);
  return trip.shareBy === 'time'
    ? words.timeOf(writeMinutes(Number(own)), writeMinutes(Number(all)))
    : words.timeOf(decimal(decimalText(own)), `${decimal(decimalText(all))} ${trip.unit}`);
}

/**
 * A job's share of its trip: distance beyond the free distance, time on the road, tolls and parking.
 * Shares are largest remainders, so the shares of all jobs of the trip sum exactly to what it cost at these rates.
 * @param job the job
 * @param trip the trip
 * @param tripJobs all jobs of the trip
 * @param rates the rate card that counts
 * @param setting the business's time zone, and in which words
 * @throws Problem when the trip is in another unit than the rate, or a job lacks what the trip is shared by
 */
export function travelLines(
  job: Job,
  trip: Trip,
  tripJobs: readonly Job[],
  rates: RateCard,
  setting: Setting,
): readonly PricedLine[] {
  const { words, money, price, decimal } = setting;
  const rate = validOn(rates.travel, trip.day);
  const index = trip.jobs.findIndex((each) => each.job === job.id);
  if (index < 0) return [];
  const shares = weights(trip, tripJobs, setting.timeZone);
  const shared =
    trip.jobs.length === 1 ? '' : words.shared(trip.shareBy, trip.jobs.length, shareText(trip, shares, index, setting));
  const line = (kind: PricedLine['kind'], what: string, total: number, because: string): readonly PricedLine[] => {
    const amount = shareOut(total, shares)[index] ?? 0;
    return amount === 0 ? [] : [oneOf(kind, what, amount, `${because}${shared}`)];
  };
  const tolls = trip.tollsMinorUnits + trip.parkingMinorUnits;
  const tollLines = line('tolls and parking', words.tollsAndParking, tolls, words.tolls(money(tolls)));
  if (rate === null) return tollLines;
  if (rate.unit !== trip.unit) {
    throw new Problem(
      `The trip is in ${trip.unit}, the travel rate in ${rate.unit}.`,
      `trips/${trip.day}.json, unit`,
      'Give both the same unit; nothing is converted by guess.',
    );
  }
  const beyond = millionths(trip.distance) - millionths(rate.freeDistance);
  const distance = beyond > 0n ? decimalText(beyond) : '0';
  const miles = lineAmountMinorUnits(distance, rate.pricePerDistanceMinorUnits);
  const minutes = roundMinutes(
    Math.max(0, trip.travelMinutes - rate.freeTravelMinutes),
    rate.timeStepMinutes,
    rate.timeRounding,
  );
  const time = lineAmountMinorUnits(String(minutes), String(rate.timePriceMinorUnits), '60');
  const [driven, free, charged] = [trip.distance, rate.freeDistance, distance].map((each) =>
    decimal(decimalText(millionths(each))),
  ) as [string, string, string];
  const byDistance = words.distance(
    trip.unit,
    driven,
    free,
    charged,
    price(rate.pricePerDistanceMinorUnits),
    money(miles),
  );
  const byTime = words.onTheRoad(
    writeMinutes(trip.travelMinutes),
    writeMinutes(minutes),
    money(rate.timePriceMinorUnits),
    money(time),
  );
  return [
    ...line('travel distance', words.travelDistance, miles, byDistance),
    ...line('travel time', words.travelTime, time, byTime),
    ...tollLines,
  ];
}
