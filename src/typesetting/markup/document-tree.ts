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

/** The tags among some children. */
export function tagsIn(nodes: readonly TreeNode[]): readonly TagNode[] {
  return nodes.filter((node): node is TagNode => 'tag' in node);
}
