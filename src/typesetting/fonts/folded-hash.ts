/**
 * 32 hexadecimal digits that differ with the text: for names inside a PDF, not for security.
 * @param text any text; FNV-1a with four starting values (draft-eastlake-fnv)
 */
export function foldedHash(text: string): string {
  return [0x811c9dc5, 0x01000193, 0x9e3779b9, 0x85ebca6b]
    .map((start) => {
      let hash = start;
      for (let index = 0; index < text.length; index += 1)
        hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193) >>> 0;
      return hash.toString(16).padStart(8, '0');
    })
    .join('');
}
