import { Problem } from '../problem.ts';
import { decimalText, lineAmountMinorUnits, millionths } from '../quantities/decimal.ts';
import { roundMinutes } from '../quantities/round-minutes.ts';
import { shareOut } from '../quantities/share-out.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import type { Trip } from '../records/trip.ts';
import { validOn } from './effective-rates.ts';
import type { PricedLine } from './priced-line.ts';
import { workMinutes, writeMinutes } from './work-minutes.ts';

function weights(trip: Trip, tripJobs: readonly Job[]): readonly bigint[] {
  return trip.jobs.map((each) => {
    if (trip.shareBy === 'equally') return 1n;
    if (trip.shareBy === 'distance') return millionths(each.distance ?? '0');
    const job = tripJobs.find((one) => one.id === each.job);
    return BigInt(job === undefined ? 0 : workMinutes(job));
  });
}

/**
 * A job's share of its trip: distance beyond the free distance, time on the road, tolls and parking.
 * Shares are largest remainders, so the shares of all jobs of the trip sum exactly to what it cost.
 * @param job the job
 * @param trip the trip
 * @param tripJobs all jobs of the trip
 * @param rates the rate card that counts
 */
export function travelLines(job: Job, trip: Trip, tripJobs: readonly Job[], rates: RateCard): readonly PricedLine[] {
  const rate = validOn(rates.travel, trip.day);
  const place = trip.jobs.findIndex((each) => each.job === job.id);
  if (place < 0) return [];
  const share = (total: number) => shareOut(total, weights(trip, tripJobs))[place] ?? 0;
  const shared =
    trip.jobs.length === 1
      ? ''
      : `, shared ${trip.shareBy === 'equally' ? 'equally' : `by ${trip.shareBy}`} over ${trip.jobs.length} vehicles`;
  const line = (kind: PricedLine['kind'], what: string, total: number, because: string): readonly PricedLine[] => {
    const amount = share(total);
    return amount === 0
      ? []
      : [
          {
            kind,
            what,
            because,
            quantity: '1',
            unit: 'each',
            unitPriceMinorUnits: String(amount),
            baseQuantity: '1',
            discountMinorUnits: 0,
            discountBecause: '',
          },
        ];
  };
  const extras = trip.tollsMinorUnits + trip.parkingMinorUnits;
  if (rate === null) return line('tolls and parking', 'Tolls and parking', extras, `at cost${shared}`);
  if (rate.unit !== trip.unit) {
    throw new Problem(
      `The trip is in ${trip.unit}, the travel rate in ${rate.unit}.`,
      `trips/${trip.day}.json, unit`,
      'Give both the same unit; nothing is converted by guess.',
    );
  }
  const beyond = millionths(trip.distance) - millionths(rate.freeDistance);
  const distance = beyond > 0n ? decimalText(beyond) : '0';
  const minutes = roundMinutes(
    Math.max(0, trip.travelMinutes - rate.freeTravelMinutes),
    rate.timeStepMinutes,
    rate.timeRounding,
  );
  return [
    ...line(
      'travel distance',
      'Travel, distance share',
      lineAmountMinorUnits(distance, rate.pricePerDistanceMinorUnits),
      `${trip.distance} ${trip.unit} less ${rate.freeDistance} free = ${distance} ${trip.unit}${shared}`,
    ),
    ...line(
      'travel time',
      'Travel, time share',
      lineAmountMinorUnits(String(minutes), String(rate.timePriceMinorUnits), '60'),
      `${writeMinutes(trip.travelMinutes)} on the road, charged as ${writeMinutes(minutes)}${shared}`,
    ),
    ...line('tolls and parking', 'Tolls and parking, share', extras, `at cost${shared}`),
  ];
}
