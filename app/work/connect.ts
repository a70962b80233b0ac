import type { Answered, Asked, JobKind, Jobs } from './jobs';

/** Codes of our own; a job's own error keeps its own code. `work-failed`: the worker failed twice. */
export type WorkCode = 'work-cancelled' | 'work-failed' | 'work-slow';

/** A job that was not done. `detail` is for the "what happened" a maker may copy. */
export class WorkError extends Error {
  override readonly name = 'WorkError';
  constructor(
    readonly code: WorkCode | string,
    readonly detail = '',
  ) {
    super(code);
  }
}

export type AskOptions = {
  readonly signal?: AbortSignal;
  readonly progress?: (share: number, soFar?: unknown) => void;
  /** Within a lane the latest request wins and cancels the one before; a lane a kind, unless named. */
  readonly lane?: string;
};

export type Hand = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror' | 'onmessageerror'>;
export type Times = { readonly idleMs: number; readonly patienceMs: number; readonly limitMs: number };

/** A worker is let go after a minute unused; a cancelled job may take half a second to stop; no job takes two minutes. */
export const TIMES: Times = { idleMs: 60_000, patienceMs: 500, limitMs: 120_000 };

type Job = {
  readonly id: number;
  readonly kind: JobKind;
  readonly given: unknown;
  readonly progress: AskOptions['progress'];
  readonly tell: { made: (made: unknown) => void; failed: (error: WorkError) => void };
  tries: number;
  over: boolean;
  timer?: ReturnType<typeof setTimeout>;
};
type Lane = { running?: Job | undefined; next?: Job | undefined };

/**
 * Connects to a worker that `hire` starts when first needed. A worker that crashes is hired anew and its jobs done
 * again, once; then they fail with `work-failed`.
 */
export function connectWorker(hire: () => Hand, times: Times = TIMES) {
  const lanes = new Map<string, Lane>();
  let hand: Hand | undefined;
  let idle: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;

  /** Asks for a job. Rejects with WorkError. */
  function ask<K extends JobKind>(
    kind: K,
    given: Jobs[K]['given'],
    options: AskOptions = {},
  ): Promise<Jobs[K]['made']> {
    return new Promise((resolve, reject) => {
      const tell = { made: (made: unknown) => resolve(made as Jobs[K]['made']), failed: reject };
      const job: Job = { id: ++lastId, kind, given, progress: options.progress, tell, tries: 0, over: false };
      if (options.signal?.aborted) return reject(new WorkError('work-cancelled'));
      const lane = laneOf(options.lane ?? kind);
      options.signal?.addEventListener('abort', () => cancel(lane, job), { once: true });
      if (lane.next) end(lane.next, new WorkError('work-cancelled'));
      lane.next = job;
      if (lane.running) cancel(lane, lane.running);
      else begin(lane);
    });
  }

  function laneOf(name: string): Lane {
    const lane = lanes.get(name) ?? {};
    lanes.set(name, lane);
    return lane;
  }

  function begin(lane: Lane): void {
    lane.running = lane.next;
    lane.next = undefined;
    if (lane.running) start(lane.running);
    else if (![...lanes.values()].some((each) => each.running)) idle = setTimeout(dismiss, times.idleMs);
  }

  function start(job: Job): void {
    clearTimeout(idle);
    job.tries++;
    job.timer = setTimeout(() => {
      end(job, new WorkError('work-slow'));
      rehire(false);
    }, times.limitMs);
    try {
      hand ??= hireOne();
      hand.postMessage({ id: job.id, kind: job.kind, given: job.given } satisfies Asked);
    } catch (error) {
      finish(job, () => end(job, new WorkError('work-failed', String(error))));
    }
  }

  function hireOne(): Hand {
    const hired = hire();
    hired.onmessage = ({ data }: MessageEvent<Answered>) => hand === hired && answered(data);
    hired.onerror = hired.onmessageerror = () => hand === hired && rehire(true);
    return hired;
  }

  function answered(answer: Answered): void {
    const job = [...lanes.values()].find((lane) => lane.running?.id === answer.id)?.running;
    if (!job) return;
    if ('progress' in answer) {
      if (!job.over) job.progress?.(answer.progress, answer.soFar);
    } else if ('made' in answer) finish(job, () => end(job, answer));
    else finish(job, () => end(job, new WorkError(answer.code, answer.detail)));
  }

  function cancel(lane: Lane, job: Job): void {
    if (job.over) return;
    end(job, new WorkError('work-cancelled'));
    if (lane.next === job) lane.next = undefined;
    if (lane.running !== job) return;
    hand?.postMessage({ id: job.id, stop: true } satisfies Asked);
    job.timer = setTimeout(() => rehire(false), times.patienceMs);
  }

  /** Settles the promise, once. The worker may still be at it. */
  function end(job: Job, answer: WorkError | { made: unknown }): void {
    clearTimeout(job.timer);
    if (job.over) return;
    job.over = true;
    if (answer instanceof WorkError) job.tell.failed(answer);
    else job.tell.made(answer.made);
  }

  /** The worker is done with the job: the next of its lane begins. */
  function finish(job: Job, tell: () => void): void {
    tell();
    for (const lane of lanes.values()) if (lane.running === job) begin(lane);
  }

  /** A new worker in the place of one that crashed or does not stop; what was under way begins again. */
  function rehire(crashed: boolean): void {
    dismiss();
    for (const lane of lanes.values()) {
      const job = lane.running;
      if (!job) continue;
      clearTimeout(job.timer);
      if (crashed && job.tries > 1) end(job, new WorkError('work-failed'));
      if (!crashed) job.tries--;
      if (job.over) begin(lane);
      else start(job);
    }
  }

  function dismiss(): void {
    clearTimeout(idle);
    hand?.terminate();
    hand = undefined;
  }

  return { ask, dismiss };
}
