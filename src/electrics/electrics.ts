import type { DeviceLead } from '../records/connection.ts';
import type { FuseAssessment } from './assess-fuse.ts';
import type { AtDevice } from './volts-at-device.ts';

/** The electrics of a job worked out; null where the record does not tell enough. */
export type Electrics = {
  /** whether an engine is turned by a starter on this system's battery */
  readonly cranks: boolean;
  /** temperature of the conductors that the drops are worked out for */
  readonly conductorCelsius: number;
  readonly supplyDropMillivolts: number | null;
  readonly returnDropMillivolts: number | null;
  /** drop over the supply lead and its return at the device's awake current, millivolts */
  readonly leadDropMillivolts: number | null;
  /** what the two may lose together */
  readonly leadDropMillivoltsMax: number;
  readonly leadLengthMillimetres: number | null;
  /** volts at the device in each key position measured, millivolts */
  readonly atDevice: readonly AtDevice[];
  readonly supplyMillivoltsMin: number | null;
  readonly supplyMillivoltsMax: number | null;
  readonly crankMillivoltsMin: number | null;
  /** codes of ISO 16750-2 of this system whose whole range the device bears */
  readonly supplyCodes: readonly string[];
  readonly fuseAmperesMax: number | null;
  /** what the thinnest conductor of the supply lead carries for long */
  readonly leadAmperesMax: number | null;
  readonly fuses: readonly (FuseAssessment & { readonly lead: DeviceLead })[];
  readonly groundDropMillivolts: number | null;
  readonly groundTestMilliamps: number | null;
  readonly asleepMilliamps: number | null;
  readonly vehicleAsleepMilliamps: number;
  readonly vehicleAsleepMeasured: boolean;
  /** what the battery held at rest, percent; null when it was not read at rest */
  readonly batteryPercent: number | null;
  readonly standingDays: number | null;
  readonly standingDaysWanted: number;
};
