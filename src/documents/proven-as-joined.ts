import type { Evidence } from '../evidence/evidence.ts';
import type { Connection, DeviceLead } from '../records/connection.ts';
import type { WireRole } from '../records/wire-role.ts';

/** The role a vehicle wire must have for a lead. */
export const roleOfLead: Readonly<Record<DeviceLead, WireRole>> = {
  supply: 'constant',
  ignition: 'ignition',
  ground: 'ground',
};

/** Whether the readings alone show that a lead was joined to a wire of its role. */
export function provenAsJoined(made: Connection, evidence: Evidence): boolean {
  const conclusion = evidence.wires.find((wire) => wire.point === made.point)?.conclusion;
  return conclusion?.kind === 'concluded' && conclusion.role === roleOfLead[made.lead];
}
