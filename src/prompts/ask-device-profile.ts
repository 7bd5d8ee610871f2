import { type DeviceProfile, deviceProfile } from '../records/device-profile.ts';
import { gaugeOf, gaugeOrNothing, lengthOf, lengthOrNothing, numberOf, numberOrNothing, something } from './answers.ts';
import { shortName } from './ask-payer.ts';
import type { Ask } from './question.ts';

const given = (text: string) => something(text) ?? numberOrNothing(text);
const number = async (message: string, usual: number | undefined, ask: Ask) =>
  numberOf(await ask.text(message, usual === undefined ? '' : String(usual), given));

/**
 * What the maker of a device says it needs, from its papers.
 * @param ask how a prompt reaches a person
 * @param taken short names in use
 * @param current the profile as it is, or null for a new one
 * @param unit the unit of a bare length
 */
export async function askDeviceProfile(
  ask: Ask,
  taken: readonly string[],
  current: DeviceProfile | null,
  unit: 'in' | 'mm',
): Promise<DeviceProfile> {
  const name = await ask.text('Name of the device', current?.name ?? '', something);
  const maker = await ask.text('Its maker (empty when not printed)', current?.maker ?? '');
  const supplyVoltsMin = await number('Supply, lowest volts', current?.supplyVoltsMin, ask);
  const supplyVoltsMax = numberOf(
    await ask.text(
      'Supply, highest volts',
      String(current?.supplyVoltsMax ?? ''),
      (text) => given(text) ?? (numberOf(text) > supplyVoltsMin ? null : `It must be above ${supplyVoltsMin}.`),
    ),
  );
  const crank = await ask.text(
    'Lowest volts it needs while the engine cranks (empty when it may restart)',
    current?.crankVoltsMin === undefined ? '' : String(current.crankVoltsMin),
    numberOrNothing,
  );
  const awakeMilliamps = await number('Current awake, mA', current?.awakeMilliamps, ask);
  const asleepMilliamps = await number('Current asleep, mA', current?.asleepMilliamps, ask);
  const own = current?.leadGauge;
  const gauge = await ask.text(
    'Gauge of its leads (18, or 0.75 mm2)',
    own === undefined ? '' : 'awg' in own ? String(own.awg) : `${own.squareMillimetres} mm2`,
    (text) => something(text) ?? gaugeOrNothing(text),
  );
  const length = await ask.text(
    `Length of its leads, ${unit}`,
    current === null ? '' : `${current.leadLengthMillimetres} mm`,
    (text) => something(text) ?? lengthOrNothing(unit)(text),
  );
  const fuseAmperes = await number('Fuse it wants, amperes', current?.fuseAmperes, ask);
  const fusedLeads = await ask.tick(
    'Leads that need a fuse',
    ['supply', 'ignition'],
    current?.fusedLeads ?? ['supply'],
  );
  const lamp = await ask.text(
    'What its lamp shows when all is well (empty when it has none)',
    current?.lampWhenWell ?? '',
  );
  const facts = ['has an IMEI', 'has an antenna', 'transmits', 'sealed against water', 'made for the windscreen'];
  const fields = ['hasImei', 'hasAntenna', 'transmits', 'sealedAgainstWater', 'windscreen'] as const;
  const usual = facts.filter((_, index) => {
    const field = fields[index];
    return field !== undefined && (current?.[field] ?? (field === 'hasAntenna' || field === 'transmits'));
  });
  const so = await ask.tick('Mark what is so', facts, usual);
  const hottest = await number('Hottest it may get, °C', current?.operatingCelsiusMax ?? 60, ask);
  const near = current?.heatMillimetresMin;
  const heat = lengthOf(
    await ask.text(
      `Least distance from hot parts, ${unit} (empty when not printed)`,
      near === undefined ? '' : `${near} mm`,
      lengthOrNothing(unit),
    ),
    unit,
  );
  const safety = so.includes('made for the windscreen')
    ? await ask.confirm(
        'Does 49 CFR 393.5 count it as vehicle safety technology?',
        current?.vehicleSafetyTechnology ?? true,
      )
    : null;
  const {
    heatMillimetresMin: _h,
    vehicleSafetyTechnology: _s,
    maker: _m,
    crankVoltsMin: _v,
    lampWhenWell: _l,
    ...rest
  } = current ?? {};
  return deviceProfile.parse({
    ...rest,
    id: current?.id ?? shortName(name, taken),
    name,
    ...(maker === '' ? {} : { maker }),
    supplyVoltsMin,
    supplyVoltsMax,
    ...(crank === '' ? {} : { crankVoltsMin: numberOf(crank) }),
    awakeMilliamps,
    asleepMilliamps,
    leadGauge: gaugeOf(gauge),
    leadLengthMillimetres: lengthOf(length, unit) ?? 0,
    fuseAmperes,
    fusedLeads: (['supply', 'ignition'] as const).filter((lead) => fusedLeads.includes(lead)),
    ...(lamp === '' ? {} : { lampWhenWell: lamp }),
    ...Object.fromEntries(fields.map((field, index) => [field, so.includes(facts[index] ?? '')])),
    operatingCelsiusMax: hottest,
    ...(heat === null ? {} : { heatMillimetresMin: heat }),
    ...(safety === null ? {} : { vehicleSafetyTechnology: safety }),
  });
}
