const prose = new Set(['examples', 'source', 'why', 'summary']);

/** Leaves out what is no program: a rule's examples (they are its tests), its source, reason and summary. */
export const ignoreExamples = {
  shouldIgnore(path) {
    const isProse = path.isObjectProperty() && path.node.key.type === 'Identifier' && prose.has(path.node.key.name);
    return isProse ? 'examples and prose of a rule' : undefined;
  },
};
