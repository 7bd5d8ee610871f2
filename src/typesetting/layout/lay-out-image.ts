import type { TagNode } from '../markup/document-tree.ts';
import { type Block, block } from './block.ts';
import { millimetre } from './grid.ts';
import { imageSize } from './image-size.ts';
import type { Setting } from './setting.ts';
import { spaceBefore } from './style-of.ts';

/**
 * A picture at its asked width, made smaller to fit its greatest height, the column and the page.
 * @param node the image
 * @param width points
 * @param setting the pictures' bytes, structure
 * @throws Problem for a picture that is not there, cannot be read or is coloured for printing inks
 */
export function layOutImage(node: TagNode, width: number, setting: Setting): Block {
  const name = node.attributes.src ?? '';
  const bytes = setting.images[name];
  if (bytes === undefined)
    throw setting.problem(`There is no picture "${name}".`, node, 'Add the picture, or take the <image> out.');
  const size = imageSize(bytes);
  if (size === null)
    throw setting.problem(`The picture "${name}" is neither JPEG nor PNG.`, node, 'Save it as JPEG or PNG.');
  if (size.components === 4)
    throw setting.problem(`The picture "${name}" has ink colours (CMYK).`, node, 'Save it with screen colours (RGB).');
  const asked = Math.min(width, Number(node.attributes.width) * millimetre);
  const heightMax = Math.min(setting.room, Number(node.attributes['height-max'] ?? 1000) * millimetre);
  const scale = Math.min(asked / size.width, heightMax / size.height);
  const [own, height] = [size.width * scale, size.height * scale];
  const free = width - own;
  const x = node.attributes.align === 'right' ? free : node.attributes.align === 'centre' ? free / 2 : 0;
  return block({
    height,
    spaceBefore: spaceBefore(node),
    marks: [{ kind: 'image', x, y: 0, width: own, height, name, element: setting.placeOf(node) }],
  });
}
