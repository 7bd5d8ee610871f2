import { logoName } from '../documents/handover-view.ts';
import type { Job } from '../records/job.ts';
import { readLogo } from '../storage/logo.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readPhotographs } from '../storage/photographs.ts';

/**
 * The pictures that a document can print, by name: the business's logo and the photographs of a job.
 * @param book the open book
 * @param job the job whose photographs are printed, or null for none
 */
export async function documentImages(book: OpenBook, job: Job | null): Promise<Readonly<Record<string, Uint8Array>>> {
  const logo = await readLogo(book);
  const photographs = job === null ? [] : await readPhotographs(book, job);
  return {
    ...(logo === null ? {} : { [logoName]: logo }),
    ...Object.fromEntries(photographs.map(({ name, bytes }) => [name, bytes])),
  };
}
