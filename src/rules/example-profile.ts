import { type DeviceProfile, deviceProfile } from '../records/device-profile.ts';

/** The device of those examples that need a certain profile: unsealed, in any position, invented. */
export const exampleProfile: DeviceProfile = deviceProfile.parse({
  id: 'example-device',
  name: 'Example device',
  supplyVoltsMin: 8,
  supplyVoltsMax: 32,
  awakeMilliamps: 80,
  asleepMilliamps: 4,
  leadGauge: { awg: 18 },
  leadLengthMillimetres: 1500,
  fuseAmperes: 3,
});
