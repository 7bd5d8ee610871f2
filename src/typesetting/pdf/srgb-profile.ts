// The published numbers of sRGB (IEC 61966-2-1:1999): primaries adapted to D50 as in the ICC's own sRGB profiles, and the tone curve.
const primaries = {
  rXYZ: [0.43607, 0.22249, 0.01392],
  gXYZ: [0.38515, 0.71687, 0.09708],
  bXYZ: [0.14307, 0.06061, 0.7141],
  wtpt: [0.9642, 1, 0.8249],
} as const;
// type 3 of ICC.1:2004, 10.15: (a·x + b)^g from d on, c·x below
const curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045] as const;

/** An ICC profile of sRGB built from published numbers (ICC.1:2004-10, 7 and 10), the same bytes every time. */
export function srgbProfile(): Uint8Array {
  const tags = [
    ['desc', words('sRGB')],
    ['cprt', words('No copyright, use freely')],
    ...Object.entries(primaries).map(([name, xyz]) => [name, fixed('XYZ ', xyz)] as const),
    ['rTRC', fixed('para', curve, 3)],
    ['gTRC', fixed('para', curve, 3)],
    ['bTRC', fixed('para', curve, 3)],
  ] as const;
  const start = 128 + 4 + 12 * tags.length;
  const total = tags.reduce((sum, [, data]) => sum + data.length, start);
  const bytes = new Uint8Array(total);
  const view = new DataView(bytes.buffer);
  const signature = (place: number, text: string) => {
    for (let index = 0; index < text.length; index += 1) bytes[place + index] = text.charCodeAt(index);
  };
  view.setUint32(0, total);
  view.setUint32(8, 0x04200000);
  signature(12, 'mntrRGB XYZ ');
  for (const [index, part] of [2026, 1, 1, 0, 0, 0].entries()) view.setUint16(24 + 2 * index, part);
  signature(36, 'acsp');
  // the profile connection space is lit by D50
  for (const [index, part] of primaries.wtpt.entries()) view.setInt32(68 + 4 * index, Math.round(part * 65536));
  view.setUint32(128, tags.length);
  let offset = start;
  for (const [index, [name, data]] of tags.entries()) {
    signature(132 + 12 * index, name);
    view.setUint32(136 + 12 * index, offset);
    view.setUint32(140 + 12 * index, data.length);
    bytes.set(data, offset);
    offset += data.length;
  }
  return bytes;
}

function fixed(type: string, numbers: readonly number[], kind = 0): Uint8Array {
  const head = type === 'para' ? 12 : 8;
  const bytes = new Uint8Array(head + 4 * numbers.length);
  const view = new DataView(bytes.buffer);
  for (let index = 0; index < 4; index += 1) bytes[index] = type.charCodeAt(index);
  if (type === 'para') view.setUint16(8, kind);
  for (const [index, number] of numbers.entries()) view.setInt32(head + 4 * index, Math.round(number * 65536));
  return bytes;
}

// multiLocalizedUnicodeType (10.13) with one record, English
function words(text: string): Uint8Array {
  const bytes = new Uint8Array(Math.ceil((28 + 2 * text.length) / 4) * 4);
  const view = new DataView(bytes.buffer);
  for (const [index, letter] of [...'mluc'].entries()) bytes[index] = letter.charCodeAt(0);
  view.setUint32(8, 1);
  view.setUint32(12, 12);
  view.setUint16(16, 0x656e);
  view.setUint16(18, 0x5553);
  view.setUint32(20, 2 * text.length);
  view.setUint32(24, 28);
  for (let index = 0; index < text.length; index += 1) view.setUint16(28 + 2 * index, text.charCodeAt(index));
  return bytes;
}
