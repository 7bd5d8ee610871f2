import { isIPv4 } from 'node:net';
import { networkInterfaces } from 'node:os';
import { Problem } from '../problem.ts';

/** Address blocks that never stand on the open internet (RFC 1918; RFC 3927 for link-local). */
const privateBlocks = /^(10\.|192\.168\.|172\.(1[6-9]|2\d|3[01])\.|169\.254\.)/;

function ownAddresses(): readonly string[] {
  return Object.values(networkInterfaces())
    .flatMap((each) => each ?? [])
    .filter((each) => each.family === 'IPv4' && !each.internal)
    .map((each) => each.address);
}

/**
 * The one address of this machine in its own network, for a page that another screen opens.
 * @param wanted the address named on the command line, or null to take the only one there is
 * @param own the machine's addresses
 * @throws Problem when there is none, more than one and none is named, or the named one is not this machine's own
 */
export function ownNetworkAddress(wanted: string | null, own: readonly string[] = ownAddresses()): string {
  const addresses = own.filter((address) => privateBlocks.test(address));
  if (wanted !== null) {
    if (isIPv4(wanted) && addresses.includes(wanted)) return wanted;
    throw new Problem(
      `${wanted} is not an address of this machine in a private network.`,
      '--address',
      addresses.length === 0 ? 'This machine has none: join a network first.' : `Name one of ${addresses.join(', ')}.`,
      2,
    );
  }
  const [only, ...more] = addresses;
  if (only === undefined)
    throw new Problem(
      'This machine is in no private network.',
      '--lan',
      'Join one (a telephone’s hot spot will do), or sign on this screen without --lan.',
      2,
    );
  if (more.length > 0)
    throw new Problem(
      'This machine is in more than one network.',
      '--lan',
      `Name the address to use: --address with one of ${addresses.join(', ')}.`,
      2,
    );
  return only;
}
