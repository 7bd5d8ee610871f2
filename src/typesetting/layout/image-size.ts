/** What layout needs to know of a picture, in pixels; `components` is the number of colour values (4: inks, which an archive refuses). */
export type ImageSize = {
  readonly format: 'jpeg' | 'png';
  readonly width: number;
  readonly height: number;
  readonly components: number;
};

/**
 * Size of a JPEG or PNG picture from its head, or null where the bytes are neither.
 * @param bytes the file; read by the frame header of ITU-T T.81, B.2.2, and the IHDR chunk of ISO 15948, 11.2.2
 */
export function imageSize(bytes: Uint8Array): ImageSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length >= 33 && view.getUint32(0) === 0x89504e47 && view.getUint32(12) === 0x49484452)
    return { format: 'png', width: view.getUint32(16), height: view.getUint32(20), components: 3 };
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return null;
  let index = 2;
  while (index + 9 < bytes.length) {
    if (bytes[index] !== 0xff) return null;
    const marker = bytes[index + 1] ?? 0;
    // fill bytes, and markers that carry no segment
    if (marker === 0xff) index += 1;
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) index += 2;
    else if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) {
      const [height, width] = [view.getUint16(index + 5), view.getUint16(index + 7)];
      return width === 0 || height === 0 ? null : { format: 'jpeg', width, height, components: bytes[index + 9] ?? 0 };
    } else index += 2 + view.getUint16(index + 2);
  }
  return null;
}
