import { constantIsProven } from './constant-is-proven.ts';
import { fuseIsNearTheTap } from './fuse-is-near-the-tap.ts';
import { fuseSuitsTheWire } from './fuse-suits-the-wire.ts';
import { groundDropIsSmall } from './ground-drop-is-small.ts';
import { groundIsProven } from './ground-is-proven.ts';
import { handRules } from './hand-rules.ts';
import { ignitionIsProven } from './ignition-is-proven.ts';
import { imeiIsPlausible } from './imei-is-plausible.ts';
import { keyOutWaitIsLongEnough } from './key-out-wait-is-long-enough.ts';
import { loadedReadingTaken } from './loaded-reading-taken.ts';
import { noTapOnDataWire } from './no-tap-on-data-wire.ts';
import { noTapOnHighVoltageWiring } from './no-tap-on-high-voltage-wiring.ts';
import { noTapOnRestraintWiring } from './no-tap-on-restraint-wiring.ts';
import { odometerNotBelowEarlier } from './odometer-not-below-earlier.ts';
import { photographsArePresent } from './photographs-are-present.ts';
import { purchaseOrderWhereThePayerNeedsOne } from './purchase-order-where-the-payer-needs-one.ts';
import { recordIsComplete } from './record-is-complete.ts';
import type { Rule } from './rule.ts';
import { signatureOrReason } from './signature-or-reason.ts';
import { standingDrainIsAcceptable } from './standing-drain-is-acceptable.ts';
import { supplyLeadIsFused } from './supply-lead-is-fused.ts';
import { supplyWithinDeviceWindow } from './supply-within-device-window.ts';
import { systemVoltsAgree } from './system-volts-agree.ts';
import { timesArePossible } from './times-are-possible.ts';
import { vinIsPlausible } from './vin-is-plausible.ts';

/** Every trade rule, in the order in which a checklist reads: wiring, then work by hand, then the record. */
export const rules: readonly Rule[] = [
  constantIsProven,
  fuseIsNearTheTap,
  fuseSuitsTheWire,
  groundDropIsSmall,
  groundIsProven,
  ignitionIsProven,
  keyOutWaitIsLongEnough,
  loadedReadingTaken,
  noTapOnDataWire,
  noTapOnHighVoltageWiring,
  noTapOnRestraintWiring,
  standingDrainIsAcceptable,
  supplyLeadIsFused,
  supplyWithinDeviceWindow,
  systemVoltsAgree,
  ...handRules,
  imeiIsPlausible,
  odometerNotBelowEarlier,
  photographsArePresent,
  purchaseOrderWhereThePayerNeedsOne,
  recordIsComplete,
  signatureOrReason,
  timesArePossible,
  vinIsPlausible,
];
