import { awayFromHeatSources } from './away-from-heat-sources.ts';
import { batteryRestsCharged } from './battery-rests-charged.ts';
import { bendRadiusIsWideEnough } from './bend-radius-is-wide-enough.ts';
import { chargingVoltsAreNormal } from './charging-volts-are-normal.ts';
import { clearOfAirBags } from './clear-of-air-bags.ts';
import { clearOfHeadStrikeAreas } from './clear-of-head-strike-areas.ts';
import { constantIsProven } from './constant-is-proven.ts';
import { deviceFuseOpensFirst } from './device-fuse-opens-first.ts';
import { deviceIsActive } from './device-is-active.ts';
import { deviceIsFirm } from './device-is-firm.ts';
import { deviceLampAsTheProfileSays } from './device-lamp-as-the-profile-says.ts';
import { deviceNotInAnotherVehicle } from './device-not-in-another-vehicle.ts';
import { deviceWindowCoversASupplyCode } from './device-window-covers-a-supply-code.ts';
import { devicesAreNamed } from './devices-are-named.ts';
import { distanceFromPeople } from './distance-from-people.ts';
import { doesNotBlockViewVentsOrControls } from './does-not-block-view-vents-or-controls.ts';
import { dryOrSealed } from './dry-or-sealed.ts';
import { everyFastenerIsBack } from './every-fastener-is-back.ts';
import { fixingPointsSuffice } from './fixing-points-suffice.ts';
import { functionsWorkAgain } from './functions-work-again.ts';
import { fuseBearsTheLoad } from './fuse-bears-the-load.ts';
import { fuseIsNearTheTap } from './fuse-is-near-the-tap.ts';
import { fuseIsTapedAndTied } from './fuse-is-taped-and-tied.ts';
import { fuseSuitsTheWire } from './fuse-suits-the-wire.ts';
import { groundDropIsSmall } from './ground-drop-is-small.ts';
import { groundIsOnBareMetal } from './ground-is-on-bare-metal.ts';
import { groundIsProven } from './ground-is-proven.ts';
import { harnessHasSlack } from './harness-has-slack.ts';
import { harnessIsClearOfEdgesHeatAndMovingParts } from './harness-is-clear-of-edges-heat-and-moving-parts.ts';
import { harnessIsLoomed } from './harness-is-loomed.ts';
import { harnessIsTiedAtIntervals } from './harness-is-tied-at-intervals.ts';
import { iccidIsPlausible } from './iccid-is-plausible.ts';
import { ignitionHoldsThroughCrank } from './ignition-holds-through-crank.ts';
import { ignitionIsProven } from './ignition-is-proven.ts';
import { imeiIsPlausible } from './imei-is-plausible.ts';
import { isolatorSideIsRecorded } from './isolator-side-is-recorded.ts';
import { jointHeldATug } from './joint-held-a-tug.ts';
import { keyOutWaitIsLongEnough } from './key-out-wait-is-long-enough.ts';
import { leadCarriesTheLoad } from './lead-carries-the-load.ts';
import { leadIsNoSmallerThanDeviceLead } from './lead-is-no-smaller-than-device-lead.ts';
import { loadedReadingTaken } from './loaded-reading-taken.ts';
import { methodSuitsAWetPlace } from './method-suits-a-wet-place.ts';
import { noFactIsLeftOpen } from './no-fact-is-left-open.ts';
import { noInsulationDisplacingTapOnSupplyLead } from './no-insulation-displacing-tap-on-supply-lead.ts';
import { noOverVoltage } from './no-over-voltage.ts';
import { noSupplyFromHalfABatteryPair } from './no-supply-from-half-a-battery-pair.ts';
import { noTapOnDataWire } from './no-tap-on-data-wire.ts';
import { noTapOnHighVoltageWiring } from './no-tap-on-high-voltage-wiring.ts';
import { noTapOnRestraintWiring } from './no-tap-on-restraint-wiring.ts';
import { noTwistOnlyJoint } from './no-twist-only-joint.ts';
import { notWithinCasualReach } from './not-within-casual-reach.ts';
import { nothingTiedToSteeringBrakeOrRestraintParts } from './nothing-tied-to-steering-brake-or-restraint-parts.ts';
import { odometerNotBelowEarlier } from './odometer-not-below-earlier.ts';
import { orientationAsTheProfileSays } from './orientation-as-the-profile-says.ts';
import { photographsArePresent } from './photographs-are-present.ts';
import { photographsAskedForArePresent } from './photographs-asked-for-are-present.ts';
import { photographsWhereARuleAsks } from './photographs-where-a-rule-asks.ts';
import { plasticsNotOverTightened } from './plastics-not-over-tightened.ts';
import { purchaseOrderWhereThePayerNeedsOne } from './purchase-order-where-the-payer-needs-one.ts';
import { reachableForService } from './reachable-for-service.ts';
import { recordIsComplete } from './record-is-complete.ts';
import type { Rule } from './rule.ts';
import { signatureOrReason } from './signature-or-reason.ts';
import { skyAboveTheAntennaIsNotMetal } from './sky-above-the-antenna-is-not-metal.ts';
import { spliceIsCovered } from './splice-is-covered.ts';
import { spliceIsTied } from './splice-is-tied.ts';
import { splicesAreStaggered } from './splices-are-staggered.ts';
import { standingDrainIsAcceptable } from './standing-drain-is-acceptable.ts';
import { strandsAreNotCut } from './strands-are-not-cut.ts';
import { supplyLeadIsFused } from './supply-lead-is-fused.ts';
import { supplyReadAfter } from './supply-read-after.ts';
import { supplyWithinDeviceWindow } from './supply-within-device-window.ts';
import { systemVoltsAgree } from './system-volts-agree.ts';
import { tapeIsLongEnough } from './tape-is-long-enough.ts';
import { timesArePossible } from './times-are-possible.ts';
import { verdictMatchesReadings } from './verdict-matches-readings.ts';
import { vinIsPlausible } from './vin-is-plausible.ts';
import { vinYearAgrees } from './vin-year-agrees.ts';
import { voltageDropIsSmall } from './voltage-drop-is-small.ts';
import { warningLampsNoWorse } from './warning-lamps-no-worse.ts';
import { windscreenAreaIsRespected } from './windscreen-area-is-respected.ts';
import { windscreenMountAsTheProfileSays } from './windscreen-mount-as-the-profile-says.ts';
import { wireIsNoSmallerThanTheLeadItFeeds } from './wire-is-no-smaller-than-the-lead-it-feeds.ts';
import { wiresDoNotContradictEachOther } from './wires-do-not-contradict-each-other.ts';
import { withinHeatLimit } from './within-heat-limit.ts';

/** Every trade rule, in the order in which a checklist reads. */
export const rules: readonly Rule[] = [
  batteryRestsCharged,
  chargingVoltsAreNormal,
  constantIsProven,
  deviceFuseOpensFirst,
  deviceWindowCoversASupplyCode,
  fuseBearsTheLoad,
  fuseIsNearTheTap,
  fuseSuitsTheWire,
  groundDropIsSmall,
  groundIsOnBareMetal,
  groundIsProven,
  ignitionHoldsThroughCrank,
  ignitionIsProven,
  isolatorSideIsRecorded,
  keyOutWaitIsLongEnough,
  leadCarriesTheLoad,
  leadIsNoSmallerThanDeviceLead,
  loadedReadingTaken,
  noOverVoltage,
  noSupplyFromHalfABatteryPair,
  noTapOnDataWire,
  noTapOnHighVoltageWiring,
  noTapOnRestraintWiring,
  standingDrainIsAcceptable,
  supplyLeadIsFused,
  supplyWithinDeviceWindow,
  systemVoltsAgree,
  verdictMatchesReadings,
  voltageDropIsSmall,
  wireIsNoSmallerThanTheLeadItFeeds,
  wiresDoNotContradictEachOther,
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
  awayFromHeatSources,
  clearOfAirBags,
  clearOfHeadStrikeAreas,
  deviceIsFirm,
  distanceFromPeople,
  doesNotBlockViewVentsOrControls,
  dryOrSealed,
  fixingPointsSuffice,
  notWithinCasualReach,
  orientationAsTheProfileSays,
  reachableForService,
  skyAboveTheAntennaIsNotMetal,
  windscreenAreaIsRespected,
  windscreenMountAsTheProfileSays,
  withinHeatLimit,
  deviceIsActive,
  deviceLampAsTheProfileSays,
  everyFastenerIsBack,
  functionsWorkAgain,
  plasticsNotOverTightened,
  supplyReadAfter,
  warningLampsNoWorse,
  deviceNotInAnotherVehicle,
  devicesAreNamed,
  iccidIsPlausible,
  imeiIsPlausible,
  noFactIsLeftOpen,
  odometerNotBelowEarlier,
  photographsArePresent,
  photographsAskedForArePresent,
  photographsWhereARuleAsks,
  purchaseOrderWhereThePayerNeedsOne,
  recordIsComplete,
  signatureOrReason,
  timesArePossible,
  vinIsPlausible,
  vinYearAgrees,
];
