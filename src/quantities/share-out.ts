/**
 * A whole amount shared by weights so that the shares sum exactly: largest remainder (Hamilton), ties to the lowest place.
 * @param total the amount, whole
 * @param weights not negative, not all zero; all zero shares equally
 */
export function shareOut(total: number, weights: readonly bigint[]): readonly number[] {
  const given = weights.reduce((sum, weight) => sum + weight, 0n);
  const counted = given === 0n ? weights.map(() => 1n) : weights;
  const sum = given === 0n ? BigInt(weights.length) : given;
  const magnitude = BigInt(Math.abs(total));
  const floors = counted.map((weight) => (magnitude * weight) / sum);
  let rest = Number(magnitude - floors.reduce((all, share) => all + share, 0n));
  const order = counted
    .map((weight, index) => ({ index, remainder: (magnitude * weight) % sum }))
    .sort((one, other) =>
      one.remainder === other.remainder ? one.index - other.index : one.remainder > other.remainder ? -1 : 1,
    );
  const shares = floors.map(Number);
  for (const { index } of order) {
    if (rest === 0) break;
    shares[index] = (shares[index] ?? 0) + 1;
    rest -= 1;
  }
  return shares.map((share) => (total < 0 && share !== 0 ? -share : share));
}
