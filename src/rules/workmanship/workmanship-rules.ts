import { bendRadiusIsWideEnough } from './bend-radius-is-wide-enough.ts';
import { fuseIsTapedAndTied } from './fuse-is-taped-and-tied.ts';
import { harnessHasSlack } from './harness-has-slack.ts';
import { harnessIsClearOfEdgesHeatAndMovingParts } from './harness-is-clear-of-edges-heat-and-moving-parts.ts';
import { harnessIsLoomed } from './harness-is-loomed.ts';
import { harnessIsTiedAtIntervals } from './harness-is-tied-at-intervals.ts';
import { jointHeldATug } from './joint-held-a-tug.ts';
import { methodSuitsAWetPlace } from './method-suits-a-wet-place.ts';
import { noInsulationDisplacingTapOnSupplyLead } from './no-insulation-displacing-tap-on-supply-lead.ts';
import { noTwistOnlyJoint } from './no-twist-only-joint.ts';
import { nothingTiedToSteeringBrakeOrRestraintParts } from './nothing-tied-to-steering-brake-or-restraint-parts.ts';
import { spliceIsCovered } from './splice-is-covered.ts';
import { spliceIsTied } from './splice-is-tied.ts';
import { splicesAreStaggered } from './splices-are-staggered.ts';
import { strandsAreNotCut } from './strands-are-not-cut.ts';
import { tapeIsLongEnough } from './tape-is-long-enough.ts';

/** The rules of workmanship, in the order in which a checklist reads. */
export const workmanshipRules = [
  bendRadiusIsWideEnough,
  fuseIsTapedAndTied,
  harnessHasSlack,
  harnessIsClearOfEdgesHeatAndMovingParts,
  harnessIsLoomed,
  harnessIsTiedAtIntervals,
  jointHeldATug,
  methodSuitsAWetPlace,
  noInsulationDisplacingTapOnSupplyLead,
  noTwistOnlyJoint,
  nothingTiedToSteeringBrakeOrRestraintParts,
  spliceIsCovered,
  spliceIsTied,
  splicesAreStaggered,
  strandsAreNotCut,
  tapeIsLongEnough,
] as const;
