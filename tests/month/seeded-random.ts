/** A source of numbers that are the same on every machine: a 32-bit xorshift. */
export function seededRandom(seed: number) {
  let state = seed >>> 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4_294_967_296;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  const pick = <Value>(values: readonly Value[]): Value => {
    const value = values[below(values.length)];
    if (value === undefined) throw new Error('nothing to pick from');
    return value;
  };
  return { below, pick, chance: (share: number): boolean => next() < share };
}
export type SeededRandom = ReturnType<typeof seededRandom>;
