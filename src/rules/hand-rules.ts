import { bendRadiusIsWideEnough } from './bend-radius-is-wide-enough.ts';
import { clearOfAirBags } from './clear-of-air-bags.ts';
import { clearOfHeadStrikeAreas } from './clear-of-head-strike-areas.ts';
import { deviceIsActive } from './device-is-active.ts';
import { deviceIsFirm } from './device-is-firm.ts';
import { deviceLampAsTheProfileSays } from './device-lamp-as-the-profile-says.ts';
import { distanceFromPeople } from './distance-from-people.ts';
import { doesNotBlockViewVentsOrControls } from './does-not-block-view-vents-or-controls.ts';
import { dryOrSealed } from './dry-or-sealed.ts';
import { everyFastenerIsBack } from './every-fastener-is-back.ts';
import { fixingPointsSuffice } from './fixing-points-suffice.ts';
import { functionsWorkAgain } from './functions-work-again.ts';
import { fuseIsTapedAndTied } from './fuse-is-taped-and-tied.ts';
import { harnessHasSlack } from './harness-has-slack.ts';
import { harnessIsClearOfEdgesHeatAndMovingParts } from './harness-is-clear-of-edges-heat-and-moving-parts.ts';
import { harnessIsLoomed } from './harness-is-loomed.ts';
import { harnessIsTiedAtIntervals } from './harness-is-tied-at-intervals.ts';
import { jointHeldATug } from './joint-held-a-tug.ts';
import { methodSuitsAWetPlace } from './method-suits-a-wet-place.ts';
import { noInsulationDisplacingTapOnSupplyLead } from './no-insulation-displacing-tap-on-supply-lead.ts';
import { noTwistOnlyJoint } from './no-twist-only-joint.ts';
import { notWithinCasualReach } from './not-within-casual-reach.ts';
import { nothingTiedToSteeringBrakeOrRestraintParts } from './nothing-tied-to-steering-brake-or-restraint-parts.ts';
import { orientationAsTheProfileSays } from './orientation-as-the-profile-says.ts';
import { plasticsNotOverTightened } from './plastics-not-over-tightened.ts';
import { reachableForService } from './reachable-for-service.ts';
import type { Rule } from './rule.ts';
import { skyAboveTheAntennaIsNotMetal } from './sky-above-the-antenna-is-not-metal.ts';
import { spliceIsCovered } from './splice-is-covered.ts';
import { spliceIsTied } from './splice-is-tied.ts';
import { splicesAreStaggered } from './splices-are-staggered.ts';
import { strandsAreNotCut } from './strands-are-not-cut.ts';
import { supplyReadAfter } from './supply-read-after.ts';
import { tapeIsLongEnough } from './tape-is-long-enough.ts';
import { warningLampsNoWorse } from './warning-lamps-no-worse.ts';
import { windscreenAreaIsRespected } from './windscreen-area-is-respected.ts';
import { withinHeatLimit } from './within-heat-limit.ts';

/** The rules on what hands did: workmanship, then placement, then closing up; in the order of the work. */
export const handRules: readonly Rule[] = [
  noInsulationDisplacingTapOnSupplyLead,
  noTwistOnlyJoint,
  spliceIsCovered,
  spliceIsTied,
  strandsAreNotCut,
  tapeIsLongEnough,
  methodSuitsAWetPlace,
  splicesAreStaggered,
  fuseIsTapedAndTied,
  jointHeldATug,
  harnessIsLoomed,
  harnessIsTiedAtIntervals,
  harnessHasSlack,
  harnessIsClearOfEdgesHeatAndMovingParts,
  nothingTiedToSteeringBrakeOrRestraintParts,
  bendRadiusIsWideEnough,
  clearOfAirBags,
  clearOfHeadStrikeAreas,
  windscreenAreaIsRespected,
  skyAboveTheAntennaIsNotMetal,
  distanceFromPeople,
  withinHeatLimit,
  dryOrSealed,
  deviceIsFirm,
  fixingPointsSuffice,
  doesNotBlockViewVentsOrControls,
  reachableForService,
  notWithinCasualReach,
  orientationAsTheProfileSays,
  everyFastenerIsBack,
  plasticsNotOverTightened,
  warningLampsNoWorse,
  functionsWorkAgain,
  deviceLampAsTheProfileSays,
  deviceIsActive,
  supplyReadAfter,
];
