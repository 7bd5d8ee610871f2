/** Characters in the order in which ISO 3780 hands them out. */
const characters = 'ABCDEFGHJKLMNPRSTUVWXYZ1234567890';

/** Regions by the first character of a VIN. Source: ISO 3780 (from memory). */
const regions = [
  { first: 'ABCDEFGH', region: 'Africa' },
  { first: 'JKLMNPR', region: 'Asia' },
  { first: 'STUVWXYZ', region: 'Europe' },
  { first: '12345', region: 'North America' },
  { first: '67', region: 'Oceania' },
  { first: '890', region: 'South America' },
] as const;
export type VinRegion = (typeof regions)[number]['region'];

/** Countries (ISO 3166-1) by the first two characters, from one to the other; those not listed are left unsaid. Source: ISO 3780 as commonly printed (from memory). */
const countries: readonly (readonly [from: string, to: string, country: string, region?: VinRegion])[] = [
  ['AA', 'AH', 'ZA'],
  ['HA', 'H0', 'CN', 'Asia'],
  ['JA', 'J0', 'JP'],
  ['KL', 'KR', 'KR'],
  ['LA', 'L0', 'CN'],
  ['MA', 'ME', 'IN'],
  ['ML', 'MR', 'TH'],
  ['NL', 'NR', 'TR'],
  ['PL', 'PR', 'MY'],
  ['RF', 'RG', 'TW'],
  ['RL', 'RN', 'VN'],
  ['SA', 'SM', 'GB'],
  ['SU', 'SZ', 'PL'],
  ['TJ', 'TP', 'CZ'],
  ['TR', 'TV', 'HU'],
  ['TW', 'T1', 'PT'],
  ['UU', 'UX', 'RO'],
  ['U5', 'U7', 'SK'],
  ['VA', 'VE', 'AT'],
  ['VF', 'VR', 'FR'],
  ['VS', 'VW', 'ES'],
  ['WA', 'W0', 'DE'],
  ['XL', 'XR', 'NL'],
  ['YA', 'YE', 'BE'],
  ['YF', 'YK', 'FI'],
  ['YS', 'YW', 'SE'],
  ['ZA', 'ZR', 'IT'],
  ['1A', '10', 'US'],
  ['2A', '20', 'CA'],
  ['3A', '3W', 'MX'],
  ['4A', '40', 'US'],
  ['5A', '50', 'US'],
  ['6A', '6W', 'AU'],
  ['7A', '7E', 'NZ'],
  ['7F', '70', 'US', 'North America'],
  ['8A', '8E', 'AR'],
  ['8F', '8G', 'CL'],
  ['9A', '9E', 'BR'],
  ['9F', '9G', 'CO'],
  ['93', '99', 'BR'],
];

const rank = (two: string) => characters.indexOf(two[0] ?? ' ') * characters.length + characters.indexOf(two[1] ?? ' ');

/** Where a vehicle's maker is registered. */
export type VinOrigin = {
  readonly region: VinRegion /** ISO 3166-1, or null where the table does not say */;
  readonly country: string | null;
};

/**
 * Region and country of the maker from the first two characters of a VIN, or null when they cannot begin one.
 * Source: ISO 3780 (from memory).
 * @param vin a VIN, or its first two characters
 */
export function vinOrigin(vin: string): VinOrigin | null {
  const two = vin.slice(0, 2);
  const region = regions.find((each) => each.first.includes(two[0] ?? ' '))?.region;
  if (region === undefined || two.length < 2 || !characters.includes(two[1] ?? ' ')) return null;
  const found = countries.find(([from, to]) => rank(two) >= rank(from) && rank(two) <= rank(to));
  return { region: found?.[3] ?? region, country: found?.[2] ?? null };
}
