/** What an attribute may hold: free text, a number, numbers with spaces or commas between, a colour #rrggbb, or one of some words. */
export type AttributeKind = 'text' | 'number' | 'numbers' | 'colour' | readonly string[];
/** What may stand inside a tag: nothing, running text, blocks, either of the two, or only some tags. */
export type Content = 'nothing' | 'text' | 'blocks' | 'text or blocks' | readonly string[];
export type TagRule = {
  readonly attributes: Readonly<Record<string, AttributeKind>>;
  readonly required?: readonly string[];
  readonly content: Content;
};

const yes = ['yes', 'no'] as const;
const sizes = ['note', 'text', 'head', 'title'] as const;
const weights = ['normal', 'bold'] as const;
const faceNames = ['sans', 'condensed', 'mono'] as const;
const alignments = ['left', 'right', 'centre'] as const;
const cellAlignments = ['left', 'right', 'centre', 'decimal'] as const;
const fills = ['none', 'black', 'light', 'white'] as const;

const textBlock: TagRule = {
  attributes: {
    size: sizes,
    weight: weights,
    face: faceNames,
    align: alignments,
    'space-before': 'number',
    'keep-with-next': yes,
  },
  content: 'text',
};
const rows: TagRule = { attributes: {}, content: ['tr'] };

/** Tags that stand in running text. */
export const textTags = ['b', 'm', 'small', 'br', 'page-number', 'page-count'] as const;

/** Tags that stand as blocks of a document, a column, a cell or a keep. */
const blockTags = [
  ...(['h1', 'h2', 'h3', 'p', 'columns', 'table', 'list', 'facts', 'keep', 'rule', 'space', 'page-break'] as const),
  ...(['figure', 'image', 'signature-field'] as const),
] as const;
export type BlockTag = (typeof blockTags)[number];

/** Whether a tag stands as a block. */
export const isBlockTag = (tag: string): tag is BlockTag => (blockTags as readonly string[]).includes(tag);

/** The closed set of tags: the attributes that each may carry, and what may stand inside it. */
export const tagSet: Readonly<Record<string, TagRule>> = {
  document: {
    attributes: { title: 'text', lang: 'text', paper: ['letter', 'a4'], accent: 'colour' },
    content: 'blocks',
  },
  footer: { attributes: {}, content: ['p'] },
  h1: textBlock,
  h2: textBlock,
  h3: textBlock,
  p: textBlock,
  b: { attributes: {}, content: 'text' },
  m: { attributes: {}, content: 'text' },
  small: { attributes: {}, content: 'text' },
  br: { attributes: {}, content: 'nothing' },
  'page-number': { attributes: {}, content: 'nothing' },
  'page-count': { attributes: {}, content: 'nothing' },
  columns: { attributes: { widths: 'numbers', gap: 'number', 'space-before': 'number' }, content: ['column'] },
  column: { attributes: {}, content: 'blocks' },
  table: {
    attributes: {
      widths: 'numbers',
      rules: ['rows', 'none'],
      caption: 'text',
      'space-before': 'number',
      size: sizes,
    },
    content: ['thead', 'tbody', 'tfoot'],
  },
  thead: rows,
  tbody: rows,
  tfoot: rows,
  tr: { attributes: { 'keep-with-next': yes }, content: ['th', 'td'] },
  th: {
    attributes: {
      scope: ['col', 'row'],
      align: cellAlignments,
      span: 'number',
      weight: weights,
      face: faceNames,
    },
    content: 'text or blocks',
  },
  td: {
    attributes: { align: cellAlignments, span: 'number', weight: weights, face: faceNames },
    content: 'text or blocks',
  },
  list: {
    attributes: { kind: ['bullet', 'number', 'dash'], 'space-before': 'number', size: sizes },
    content: ['item'],
  },
  item: { attributes: {}, content: 'text' },
  facts: { attributes: { columns: 'number', 'space-before': 'number' }, content: ['fact'] },
  fact: { attributes: { name: 'text' }, content: 'text' },
  keep: { attributes: { 'with-previous': yes }, content: 'blocks' },
  rule: {
    attributes: { weight: 'number', colour: ['black', 'accent'], 'space-before': 'number' },
    content: 'nothing',
  },
  space: { attributes: { lines: 'number' }, content: 'nothing' },
  'page-break': { attributes: {}, content: 'nothing' },
  figure: {
    attributes: { alt: 'text', width: 'number', height: 'number', 'space-before': 'number' },
    required: ['alt', 'width', 'height'],
    content: ['line', 'rect', 'circle', 'polyline', 'path', 'label'],
  },
  line: {
    attributes: { x1: 'number', y1: 'number', x2: 'number', y2: 'number', weight: 'number' },
    content: 'nothing',
  },
  rect: {
    attributes: { x: 'number', y: 'number', width: 'number', height: 'number', weight: 'number', fill: fills },
    content: 'nothing',
  },
  circle: {
    attributes: { cx: 'number', cy: 'number', r: 'number', weight: 'number', fill: fills },
    content: 'nothing',
  },
  polyline: { attributes: { points: 'numbers', weight: 'number' }, required: ['points'], content: 'nothing' },
  path: {
    attributes: { d: 'text', scale: 'number', weight: 'number', fill: fills },
    required: ['d'],
    content: 'nothing',
  },
  label: {
    attributes: {
      x: 'number',
      y: 'number',
      size: ['note', 'text', 'head'],
      align: alignments,
      weight: weights,
      width: 'number',
    },
    content: 'text',
  },
  image: {
    attributes: {
      src: 'text',
      alt: 'text',
      width: 'number',
      'height-max': 'number',
      align: alignments,
      'space-before': 'number',
    },
    required: ['src', 'alt', 'width'],
    content: 'nothing',
  },
  'signature-field': {
    attributes: { name: 'text', label: 'text', width: 'number', height: 'number' },
    required: ['name', 'label'],
    content: 'nothing',
  },
};
