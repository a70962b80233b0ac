/** The worker's entry: each job loads what it needs when it is first asked for. */
import type { Workers } from './jobs';
import { type Desk, serveJobs } from './serve';

const awaited = async (): Promise<never> => {
  throw new Error('the drafting room is not built yet');
};

const workers: Workers = { draft: awaited, layOut: awaited, print: awaited };

serveJobs(workers, self as Desk);
