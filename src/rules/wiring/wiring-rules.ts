import { batteryRestsCharged } from './battery-rests-charged.ts';
import { chargingVoltsAreNormal } from './charging-volts-are-normal.ts';
import { constantIsProven } from './constant-is-proven.ts';
import { deviceFuseOpensFirst } from './device-fuse-opens-first.ts';
import { deviceWindowCoversASupplyCode } from './device-window-covers-a-supply-code.ts';
import { fuseBearsTheLoad } from './fuse-bears-the-load.ts';
import { fuseIsNearTheTap } from './fuse-is-near-the-tap.ts';
import { fuseSuitsTheWire } from './fuse-suits-the-wire.ts';
import { groundDropIsSmall } from './ground-drop-is-small.ts';
import { groundDropsAgree } from './ground-drops-agree.ts';
import { groundIsOnBareMetal } from './ground-is-on-bare-metal.ts';
import { groundIsProven } from './ground-is-proven.ts';
import { ignitionHoldsThroughCrank } from './ignition-holds-through-crank.ts';
import { ignitionIsProven } from './ignition-is-proven.ts';
import { isolatorSideIsRecorded } from './isolator-side-is-recorded.ts';
import { keyOutWaitIsLongEnough } from './key-out-wait-is-long-enough.ts';
import { leadCarriesTheLoad } from './lead-carries-the-load.ts';
import { leadIsNoSmallerThanDeviceLead } from './lead-is-no-smaller-than-device-lead.ts';
import { loadedReadingTaken } from './loaded-reading-taken.ts';
import { noOverVoltage } from './no-over-voltage.ts';
import { noSupplyFromHalfABatteryPair } from './no-supply-from-half-a-battery-pair.ts';
import { noTapOnDataWire } from './no-tap-on-data-wire.ts';
import { noTapOnHighVoltageWiring } from './no-tap-on-high-voltage-wiring.ts';
import { noTapOnRestraintWiring } from './no-tap-on-restraint-wiring.ts';
import { readingsCanAllBeRight } from './readings-can-all-be-right.ts';
import { standingDrainIsAcceptable } from './standing-drain-is-acceptable.ts';
import { supplyLeadIsFused } from './supply-lead-is-fused.ts';
import { supplyWithinDeviceWindow } from './supply-within-device-window.ts';
import { systemVoltsAgree } from './system-volts-agree.ts';
import { verdictMatchesReadings } from './verdict-matches-readings.ts';
import { voltageDropIsSmall } from './voltage-drop-is-small.ts';
import { wireIsNoSmallerThanTheLeadItFeeds } from './wire-is-no-smaller-than-the-lead-it-feeds.ts';
import { wiresDoNotContradictEachOther } from './wires-do-not-contradict-each-other.ts';

/** The rules of wiring, in the order in which a checklist reads. */
export const wiringRules = [
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
  readingsCanAllBeRight,
  groundDropsAgree,
] as const;
