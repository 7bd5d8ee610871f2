import type { Gauge } from '../records/probe-point.ts';
import { smallestConductor } from './smallest-conductor.ts';
import { fuseAmperesMax } from './wire-fuse-limit.ts';

/** Largest distance of a fuse from the joint, millimetres. Source: 33 CFR 183.455(b)(1), 7 in, a boat rule used as a yardstick. */
export const fuseDistanceMillimetresMax = 178;

/** Largest share of its rating that a fuse may carry for long, percent. Source: NFPA 70 (NEC) 210.20(A), 125 % of the load (from memory). */
export const loadOfFusePercentMax = 80;

/** A fuse judged against what stands behind it; null where the record does not tell. */
export type FuseAssessment = {
  readonly ratingAmperes: number;
  readonly smallestConductor: Gauge | null;
  /** largest fuse the smallest conductor allows; null when it is unknown or thinner than the table */
  readonly wireAmperesMax: number | null;
  readonly suitsTheWire: boolean | null;
  /** smallest fuse that carries the load for long, amperes */
  readonly loadAmperesMin: number | null;
  readonly bearsTheLoad: boolean | null;
  readonly distanceMillimetres: number | null;
  readonly isNearTheTap: boolean | null;
};

/**
 * A fuse against the smallest conductor behind it, the load and its distance from the joint.
 * Source: FAA AC 43.13-1B 11-47, 11-48 and table 11-3; 33 CFR 183.455(b)(1); NFPA 70 210.20(A) (from memory).
 * @param ratingAmperes the fuse
 * @param conductors every conductor behind it
 * @param loadMilliamps what flows for long, or null when unknown
 * @param distanceMillimetres along the lead from the joint, or null when unknown
 */
export function assessFuse(
  ratingAmperes: number,
  conductors: readonly (Gauge | undefined)[],
  loadMilliamps: number | null,
  distanceMillimetres: number | null,
): FuseAssessment {
  const smallest = smallestConductor(conductors);
  const wireMax = smallest === null ? null : fuseAmperesMax(smallest);
  return {
    ratingAmperes,
    smallestConductor: smallest,
    wireAmperesMax: wireMax,
    suitsTheWire: smallest === null ? null : wireMax !== null && ratingAmperes <= wireMax,
    loadAmperesMin: loadMilliamps === null ? null : loadMilliamps / (loadOfFusePercentMax * 10),
    // whole milliamps, so that a load of exactly 80 % passes
    bearsTheLoad: loadMilliamps === null ? null : loadMilliamps <= ratingAmperes * loadOfFusePercentMax * 10 + 1e-6,
    distanceMillimetres,
    isNearTheTap: distanceMillimetres === null ? null : distanceMillimetres <= fuseDistanceMillimetresMax,
  };
}
