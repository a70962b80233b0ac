import type { Answered, Asked, AtWork, Workers } from './jobs';

/** The end of a connection that jobs come in by. */
export type Desk = {
  onmessage: ((event: MessageEvent<Asked>) => void) | null;
  postMessage(message: Answered, transfer: Transferable[]): void;
};

/** Does the jobs that come in by `desk`, each stoppable, and answers each exactly once. */
export function serveJobs(workers: Workers, desk: Desk): void {
  const running = new Map<number, AbortController>();
  desk.onmessage = ({ data }) => {
    if ('stop' in data) running.get(data.id)?.abort();
    else void work(data);
  };

  async function work({ id, kind, given }: Extract<Asked, { kind: unknown }>): Promise<void> {
    const stopper = new AbortController();
    running.set(id, stopper);
    const at: AtWork = {
      signal: stopper.signal,
      progress: (share, soFar) => desk.postMessage({ id, progress: share, soFar }, []),
    };
    try {
      const made = await (workers[kind] as (given: unknown, at: AtWork) => Promise<unknown>)(given, at);
      desk.postMessage(
        { id, made },
        made instanceof Uint8Array && made.buffer instanceof ArrayBuffer ? [made.buffer] : [],
      );
    } catch (error) {
      desk.postMessage({ id, code: codeOf(error), detail: String(error) }, []);
    } finally {
      running.delete(id);
    }
  }
}

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : 'work-failed';
