import type { Problem } from '../../problem.ts';
import type { TagNode, TreeNode } from '../markup/document-tree.ts';
import type { Block } from './block.ts';
import type { TextSetting } from './lay-out-text.ts';
import type { Structure } from './structure.ts';

/** What every tag is laid out by. */
export type Setting = TextSetting & {
  readonly accent: string;
  /** the sign before the decimals of a number in the document's language */
  readonly decimalSign: string;
  /** height that a page has for its content, in points */
  readonly room: number;
  readonly placeOf: Structure['placeOf'];
  readonly images: Readonly<Record<string, Uint8Array>>;
  /** lays out what stands inside a column, a cell or a keep */
  readonly layOutInside: (nodes: readonly TreeNode[], width: number, setting: Setting) => readonly Block[];
  /** an error at a node, with the template's name and the line */
  readonly problem: (what: string, node: TagNode, whatToDo: string) => Problem;
};

/** Lays out one tag to a width in points. */
export type LayOutTag = (node: TagNode, width: number, setting: Setting) => readonly Block[];
