/** A piece of text in the tree. */
export type TextNode = { readonly text: string };
/** A tag with its attributes and children. */
export type TagNode = {
  readonly tag: string;
  readonly line: number;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly TreeNode[];
};
export type TreeNode = TextNode | TagNode;

/** Attributes that every block may carry. */
const blockAttributes = ['size', 'weight', 'face', 'align', 'space-before', 'keep-with-next'] as const;

/** The closed set of tags and the attributes that each may carry. */
export const tagSet: Readonly<Record<string, readonly string[]>> = {
  document: ['title', 'lang', 'paper', 'accent'],
  footer: [],
  h1: blockAttributes,
  h2: blockAttributes,
  h3: blockAttributes,
  p: blockAttributes,
  b: [],
  m: [],
  small: [],
  br: [],
  'page-number': [],
  'page-count': [],
  columns: ['widths', 'gap', 'space-before'],
  column: [],
  table: ['widths', 'rules', 'caption', 'space-before', 'size'],
  thead: [],
  tbody: [],
  tfoot: [],
  tr: ['keep-with-next'],
  th: ['scope', 'align', 'span', 'weight', 'face'],
  td: ['align', 'span', 'weight', 'face'],
  list: ['kind', 'space-before', 'size'],
  item: [],
  facts: ['columns', 'space-before'],
  fact: ['name'],
  keep: [],
  rule: ['weight', 'colour', 'space-before'],
  space: ['lines'],
  'page-break': [],
  figure: ['alt', 'width', 'height', 'space-before'],
  line: ['x1', 'y1', 'x2', 'y2', 'weight'],
  rect: ['x', 'y', 'width', 'height', 'weight', 'fill'],
  circle: ['cx', 'cy', 'r', 'weight', 'fill'],
  label: ['x', 'y', 'size', 'align', 'weight'],
  'signature-field': ['name', 'label', 'width', 'height'],
};
