/** The oldest Node that runs keyout, as package.json says. */
const oldest = [20, 19] as const;

/**
 * What to say where Node is older than keyout needs, or null.
 * @param version such as "18.20.4"
 */
export function nodeIsTooOld(version: string): string | null {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major > oldest[0] || (major === oldest[0] && minor >= oldest[1])) return null;
  return `keyout needs Node ${oldest.join('.')} or newer; this is Node ${version}. Install a newer Node, then run it again.`;
}
