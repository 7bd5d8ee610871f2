import { deviceNotInAnotherVehicle } from './device-not-in-another-vehicle.ts';
import { devicesAreNamed } from './devices-are-named.ts';
import { iccidIsPlausible } from './iccid-is-plausible.ts';
import { imeiIsPlausible } from './imei-is-plausible.ts';
import { noFactIsLeftOpen } from './no-fact-is-left-open.ts';
import { odometerNotBelowEarlier } from './odometer-not-below-earlier.ts';
import { photographsArePresent } from './photographs-are-present.ts';
import { photographsAskedForArePresent } from './photographs-asked-for-are-present.ts';
import { photographsWhereARuleAsks } from './photographs-where-a-rule-asks.ts';
import { purchaseOrderWhereThePayerNeedsOne } from './purchase-order-where-the-payer-needs-one.ts';
import { recordIsComplete } from './record-is-complete.ts';
import { signatureOrReason } from './signature-or-reason.ts';
import { timesArePossible } from './times-are-possible.ts';
import { vinIsPlausible } from './vin-is-plausible.ts';
import { vinYearAgrees } from './vin-year-agrees.ts';

/** The rules of record, in the order in which a checklist reads. */
export const recordRules = [
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
] as const;
