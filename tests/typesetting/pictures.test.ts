import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { Problem } from '../../src/problem.ts';
import { imageSize } from '../../src/typesetting/layout/image-size.ts';
import { print } from './print.ts';

const blank = sharp({ create: { width: 40, height: 30, channels: 3, background: '#336699' } });
const page = '<document title="t"><h1>T</h1><image src="cab" alt="The cab" width="60" height-max="30"/></document>';
const refusal = async (bytes: Uint8Array): Promise<unknown> =>
  print(page, { images: { cab: bytes } }).then(
    () => null,
    (reason) => reason,
  );

describe('a picture', () => {
  test('of either format tells its size as an independent reader tells it', async () => {
    for (const bytes of [
      await blank.clone().jpeg().toBuffer(),
      await blank.clone().jpeg({ progressive: true }).toBuffer(),
      await blank.clone().png().toBuffer(),
    ]) {
      const { width, height, format } = await sharp(bytes).metadata();
      expect(imageSize(bytes)).toMatchObject({ width, height, format });
    }
  });
  test('keeps its proportions within its greatest height', async () => {
    const { pages } = await print(page, { images: { cab: await blank.clone().jpeg().toBuffer() } });
    const mark = pages[0]?.marks.find((each) => each.kind === 'image');
    expect(mark?.kind === 'image' && mark.height).toBeCloseTo((30 * 72) / 25.4, 3);
    expect(mark?.kind === 'image' && mark.width).toBeCloseTo((40 * 72) / 25.4, 3);
  });
  test('in ink colours, cut short, or of another format is a named problem, never a crash', async () => {
    const jpeg = await blank.clone().jpeg().toBuffer();
    const png = await blank.clone().png().toBuffer();
    const refused: readonly (readonly [Uint8Array, string])[] = [
      [await blank.clone().toColourspace('cmyk').jpeg().toBuffer(), 'has ink colours'],
      [new TextEncoder().encode('GIF89a and so on'), 'is neither JPEG nor PNG'],
      [new Uint8Array(), 'is neither JPEG nor PNG'],
      [jpeg.subarray(0, 20), 'is neither JPEG nor PNG'],
      [png.subarray(0, 60), 'is damaged'],
    ];
    for (const [bytes, words] of refused) {
      const problem = await refusal(bytes);
      expect(problem).toBeInstanceOf(Problem);
      expect((problem as Problem).what).toContain(words);
      expect((problem as Problem).what).toContain('"cab"');
    }
  });
});
