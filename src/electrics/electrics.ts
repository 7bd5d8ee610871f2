import type { KeyPosition } from '../records/wire-role.ts';

/** The electrics of a job worked out; null where the record does not tell enough. */
export type Electrics = {
  /** drop over the supply lead and its return at the device's awake current, millivolts */
  readonly leadDropMillivolts: number | null;
  readonly leadLengthMillimetres: number | null;
  /** volts at the device in each key position measured, millivolts */
  readonly atDevice: readonly { readonly key: KeyPosition; readonly millivolts: number }[];
  readonly supplyMillivoltsMin: number | null;
  readonly supplyMillivoltsMax: number | null;
  readonly crankMillivoltsMin: number | null;
  readonly fuseAmperesMax: number | null;
  readonly groundDropMillivolts: number | null;
  readonly groundTestMilliamps: number | null;
  readonly asleepMilliamps: number | null;
  readonly vehicleAsleepMilliamps: number;
  readonly vehicleAsleepMeasured: boolean;
  readonly standingDays: number | null;
  readonly standingDaysWanted: number;
};
