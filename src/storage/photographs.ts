import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import type { Job } from '../records/job.ts';
import type { OpenBook } from './open-book.ts';

/** Names of the photographs that lie in a job's folder. */
export function photographFiles(open: OpenBook, job: Job): readonly string[] {
  const folder = path.join(open.folder, 'photos', job.id);
  return existsSync(folder) ? readdirSync(folder).sort() : [];
}
