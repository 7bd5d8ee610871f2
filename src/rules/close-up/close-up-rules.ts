import { deviceIsActive } from './device-is-active.ts';
import { deviceLampAsTheProfileSays } from './device-lamp-as-the-profile-says.ts';
import { everyFastenerIsBack } from './every-fastener-is-back.ts';
import { functionsWorkAgain } from './functions-work-again.ts';
import { plasticsNotOverTightened } from './plastics-not-over-tightened.ts';
import { supplyReadAfter } from './supply-read-after.ts';
import { warningLampsNoWorse } from './warning-lamps-no-worse.ts';

/** The rules of close-up, in the order in which a checklist reads. */
export const closeUpRules = [
  deviceIsActive,
  deviceLampAsTheProfileSays,
  everyFastenerIsBack,
  functionsWorkAgain,
  plasticsNotOverTightened,
  supplyReadAfter,
  warningLampsNoWorse,
] as const;
