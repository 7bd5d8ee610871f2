import { chosenJobs } from '../operations/chosen-jobs.ts';
import { examineJob } from '../operations/examine-job.ts';
import { handOverJob } from '../operations/hand-over-job.ts';
import { handoverCoverPlace } from '../operations/write-covering-text.ts';
import { Problem } from '../problem.ts';
import { openBook } from '../storage/open-book.ts';
import { terminalFinding } from '../words/terminal-finding.ts';
import type { Command } from './command.ts';
import { momentOf } from './moment-of.ts';
import { writeFinding } from './write-finding.ts';

/** `keyout handover JOB…`: the handover sheet, PDF, and the text that goes with it; a job that a finding stops is not printed. */
export const handover: Command = {
  options: {},
  run: async (call, world) => {
    if (call.words.length === 0)
      throw new Problem('No job is named.', 'keyout handover', 'Name one or more jobs, such as 2026-11-24-KX4D.', 2);
    const book = await openBook(world.bookFolder);
    const printed: { job: string; sheet: string; coveringText: string }[] = [];
    let stopped = 0;
    for (const job of await chosenJobs(book, call.words, '')) {
      const examined = await examineJob(book, job);
      if (examined.open.length > 0) {
        stopped += 1;
        world.tell(
          [
            `${job.id} cannot be handed over yet:`,
            ...examined.open.map((finding) => writeFinding(terminalFinding(finding, job.vehicle))),
          ].join('\n'),
        );
        continue;
      }
      const sheet = await handOverJob(book, examined, momentOf(book, world));
      printed.push({ job: job.id, sheet, coveringText: handoverCoverPlace(job) });
    }
    world.say(
      world.json
        ? JSON.stringify(printed, null, 2)
        : printed.map((each) => `${each.sheet}\n${each.coveringText}`).join('\n'),
    );
    return stopped > 0 ? 1 : 0;
  },
};
