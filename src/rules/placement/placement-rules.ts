import { awayFromHeatSources } from './away-from-heat-sources.ts';
import { clearOfAirBags } from './clear-of-air-bags.ts';
import { clearOfHeadStrikeAreas } from './clear-of-head-strike-areas.ts';
import { deviceIsFirm } from './device-is-firm.ts';
import { distanceFromPeople } from './distance-from-people.ts';
import { doesNotBlockViewVentsOrControls } from './does-not-block-view-vents-or-controls.ts';
import { dryOrSealed } from './dry-or-sealed.ts';
import { fixingPointsSuffice } from './fixing-points-suffice.ts';
import { notWithinCasualReach } from './not-within-casual-reach.ts';
import { orientationAsTheProfileSays } from './orientation-as-the-profile-says.ts';
import { reachableForService } from './reachable-for-service.ts';
import { skyAboveTheAntennaIsNotMetal } from './sky-above-the-antenna-is-not-metal.ts';
import { windscreenAreaIsRespected } from './windscreen-area-is-respected.ts';
import { windscreenMountAsTheProfileSays } from './windscreen-mount-as-the-profile-says.ts';
import { withinHeatLimit } from './within-heat-limit.ts';

/** The rules of placement, in the order in which a checklist reads. */
export const placementRules = [
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
] as const;
