import type { ProbePoint } from '../records/probe-point.ts';
import type { KeyPosition, WireRole } from '../records/wire-role.ts';
import type { RoleTest } from './evidence.ts';
import { isTap } from './is-tap.ts';
import { contradicts, isOnly, type Levelled, levelGroups, levelled } from './levels-at.ts';
import { isGhost } from './load-comparison.ts';
import { roleSignatures, signatureOf } from './role-signatures.ts';
import type { Surroundings } from './surroundings.ts';
import { testRoles } from './test-roles.ts';

/** What elimination leaves of one wire. */
export type Elimination = {
  readonly tests: readonly RoleTest[];
  /** roles that no test rules out; `unknown` where the wire may as well be dead, or where nothing is left */
  readonly remaining: readonly WireRole[];
  /** the role that is proven: the only one that remains, with every required test passed */
  readonly proven: WireRole | null;
  /** required tests of the remaining roles that were not measured yet */
  readonly missing: number;
};

/** Eliminates the roles that the readings of a wire rule out. */
export function concludeRole(point: ProbePoint, around: Surroundings): Elimination {
  if (around.nothingFollows)
    return { tests: [], remaining: roleSignatures.map((signature) => signature.role), proven: null, missing: 0 };
  const readings = levelled(point, around);
  const tests = testRoles(point, readings, around);
  const of = (role: WireRole) => tests.filter((test) => test.role === role);
  const possible = roleSignatures
    .map((signature) => signature.role)
    .filter((role) => of(role).every((test) => test.result !== 'fails'));
  const missing = possible.reduce((sum, role) => sum + missingTests(role, of(role), around), 0);
  const only = possible.length === 1 ? possible[0] : undefined;
  // readings that cannot all be right prove nothing, also where another position would
  const contradicted = levelGroups(readings).some(contradicts);
  if (only !== undefined && missing === 0 && !contradicted)
    return { tests, remaining: possible, proven: only, missing };
  const isTapped = levelGroups(readings).some((group) => isTap(group, around));
  const nothing = possible.length === 0 || isDead(readings) || isGhost(readings) || isTapped;
  const remaining: readonly WireRole[] = nothing ? [...possible, 'unknown'] : possible;
  return { tests, remaining, proven: null, missing };
}

/** A wire on which nothing but nothing was read may lead nowhere. */
function isDead(readings: readonly Levelled[]): boolean {
  const counted = readings.filter((each) => each.void === null);
  return counted.length > 0 && counted.every((each) => isOnly(each.levels, 'zero'));
}

/** How many of a role's required tests have not passed. */
function missingTests(role: WireRole, tests: readonly RoleTest[], around: Surroundings): number {
  const passed = (key: KeyPosition | null) => tests.some((test) => test.key === key && test.result === 'passes');
  const required = signatureOf(role).required;
  // a role without required positions is proven by a test of its own
  if (required.length === 0) return passed(null) ? 0 : 1;
  return required.filter((key) => around.cranks || key !== 'crank').filter((key) => !insteadOf(key, role).some(passed))
    .length;
}

/** The engine may as well run where the key must be on, and what is dead with the key off is dead with it out. */
function insteadOf(key: KeyPosition, role: WireRole): readonly KeyPosition[] {
  if (key === 'on') return ['on', 'running'];
  return key === 'out' && signatureOf(role).levels.out === 'zero' ? ['out', 'off'] : [key];
}
