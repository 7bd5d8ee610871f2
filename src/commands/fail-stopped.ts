import type { Billed } from '../operations/bill-groups.ts';
import type { World } from './command.ts';

/**
 * Tells what stopped some groups of jobs, and ends with the last of it; does nothing when all went well.
 * @param stopped groups and what stopped each
 * @param world the outside world
 * @throws Problem the last of those told
 */
export function failStopped(stopped: Billed['stopped'], world: World): void {
  for (const { jobs, problem } of stopped.slice(0, -1))
    world.tell(
      `${jobs.map((job) => job.id).join(', ')}: ${problem.what}\n  where: ${problem.where}\n  to do: ${problem.whatToDo}`,
    );
  const last = stopped.at(-1);
  if (last !== undefined) throw last.problem;
}
