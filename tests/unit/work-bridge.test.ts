import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { connectWorker, type Hand, type WorkError } from '../../app/work/connect';
import { type AtWork, JobError, type Workers } from '../../app/work/jobs';
import { type Desk, serveJobs } from '../../app/work/serve';

/** A worker in the same thread: messages are cloned and take a turn of the clock, as they do between threads. */
class Hired implements Hand {
  onmessage: Hand['onmessage'] = null;
  onerror: Hand['onerror'] = null;
  onmessageerror: Hand['onmessageerror'] = null;
  gone = false;
  readonly desk: Desk = {
    onmessage: null,
    postMessage: (message) => setTimeout(() => this.gone || this.say('onmessage', structuredClone(message))),
  };
  constructor(workers: Workers) {
    serveJobs(workers, this.desk);
  }
  postMessage(message: unknown): void {
    const data = structuredClone(message);
    setTimeout(() => this.gone || this.desk.onmessage?.({ data } as MessageEvent));
  }
  terminate(): void {
    this.gone = true;
  }
  crash(): void {
    this.say('onerror', undefined);
  }
  private say(on: 'onmessage' | 'onerror', data: unknown): void {
    (this[on] as ((event: unknown) => void) | null)?.({ data });
  }
}

type Job = { given: unknown; at: AtWork; done: (made: unknown) => void; fail: (error: Error) => void };
let jobs: Job[];
let hired: Hired[];
const take = (given: unknown, at: AtWork) =>
  new Promise<never>((done, fail) => {
    jobs.push({ given, at, done: done as (made: unknown) => void, fail });
  });
const workers: Workers = {
  draft: take,
  layOut: take,
  print: take,
  printGuide: take,
  printPencil: take,
  printTape: take,
  printTest: take,
  printCloth: take,
  layCloth: take,
  drawSvg: take,
  printNumbers: take,
  writeTwin: take,
  writeShortTwin: take,
};
const connect = () =>
  connectWorker(
    () => {
      const one = new Hired(workers);
      hired.push(one);
      return one;
    },
    { idleMs: 60_000, patienceMs: 500, limitMs: 120_000 },
  );

const given = (toy: string) => ({ toy }) as never;
const caught = (promise: Promise<unknown>) =>
  promise.then(
    () => 'done',
    (error: WorkError) => error.code,
  );

beforeEach(() => {
  vi.useFakeTimers();
  jobs = [];
  hired = [];
});
afterEach(() => vi.useRealTimers());

describe('a request', () => {
  test('hires a worker when first asked and gets what is made', async () => {
    const { ask } = connect();
    expect(hired).toHaveLength(0);
    const answer = ask('draft', given('A'));
    await vi.advanceTimersByTimeAsync(1);
    jobs[0]?.done({ ok: true });
    await vi.advanceTimersByTimeAsync(1);
    expect(await answer).toEqual({ ok: true });
    expect(hired).toHaveLength(1);
  });

  test('that cannot be done is refused with its own code; any other failure is `work-failed`', async () => {
    const { ask } = connect();
    const answers = Promise.all([caught(ask('draft', given('A'))), caught(ask('print', given('A')))]);
    await vi.advanceTimersByTimeAsync(1);
    jobs[0]?.fail(new JobError('unknown-garment', 'garment'));
    jobs[1]?.fail(new RangeError('too deep'));
    await vi.advanceTimersByTimeAsync(1);
    expect(await answers).toEqual(['unknown-garment', 'work-failed']);
  });

  test('hears how far it is', async () => {
    const heard: number[] = [];
    const { ask } = connect();
    const answer = ask('layOut', given('A'), { progress: (share) => heard.push(share) });
    await vi.advanceTimersByTimeAsync(1);
    jobs[0]?.at.progress(0.5);
    jobs[0]?.done({});
    await vi.advanceTimersByTimeAsync(1);
    await answer;
    expect(heard).toEqual([0.5]);
  });
});

describe('of a lane the latest wins', () => {
  test('the one at work is told to stop, those waiting never begin', async () => {
    const { ask } = connect();
    const answers = ['A', 'B', 'C'].map((toy) => caught(ask('draft', given(toy))));
    await vi.advanceTimersByTimeAsync(1);
    expect(jobs[0]?.at.signal.aborted).toBe(true);
    jobs[0]?.done({});
    await vi.advanceTimersByTimeAsync(2);
    expect(jobs.map((job) => job.given)).toEqual([{ toy: 'A' }, { toy: 'C' }]);
    jobs[1]?.done({});
    await vi.advanceTimersByTimeAsync(1);
    expect(await Promise.all(answers)).toEqual(['work-cancelled', 'work-cancelled', 'done']);
  });

  test('lanes do not disturb each other', async () => {
    const { ask } = connect();
    const answers = [ask('draft', given('A')), ask('draft', given('B'), { lane: 'other' }), ask('print', given('A'))];
    await vi.advanceTimersByTimeAsync(1);
    expect(jobs).toHaveLength(3);
    for (const job of jobs) job.done({});
    await vi.advanceTimersByTimeAsync(1);
    await Promise.all(answers);
  });

  test('one that does not stop costs its worker the place; what others asked begins again', async () => {
    const { ask } = connect();
    const first = caught(ask('layOut', given('A')));
    const other = ask('print', given('B'));
    await vi.advanceTimersByTimeAsync(1);
    const second = ask('layOut', given('C'));
    await vi.advanceTimersByTimeAsync(502);
    expect(hired.map((each) => each.gone)).toEqual([true, false]);
    expect(jobs.map((job) => job.given)).toEqual([{ toy: 'A' }, { toy: 'B' }, { toy: 'C' }, { toy: 'B' }]);
    for (const job of jobs.slice(2)) job.done({});
    await vi.advanceTimersByTimeAsync(1);
    expect(await first).toBe('work-cancelled');
    await Promise.all([second, other]);
  });
});

describe('cancelling by signal', () => {
  test('before, while waiting and at work', async () => {
    const { ask } = connect();
    const stop = new AbortController();
    const atWork = caught(ask('draft', given('A'), { signal: stop.signal }));
    await vi.advanceTimersByTimeAsync(1);
    stop.abort();
    expect(await atWork).toBe('work-cancelled');
    const waits = new AbortController();
    const waiting = caught(ask('draft', given('B'), { signal: waits.signal }));
    waits.abort();
    expect(await waiting).toBe('work-cancelled');
    expect(await caught(ask('draft', given('C'), { signal: stop.signal }))).toBe('work-cancelled');
    await vi.advanceTimersByTimeAsync(1);
    expect(jobs.map((job) => [job.given, job.at.signal.aborted])).toEqual([[{ toy: 'A' }, true]]);
  });
});

describe('a worker that crashes', () => {
  test('is hired anew once and its work done again', async () => {
    const { ask } = connect();
    const answer = ask('draft', given('A'));
    await vi.advanceTimersByTimeAsync(1);
    hired[0]?.crash();
    await vi.advanceTimersByTimeAsync(1);
    jobs[1]?.done({ ok: true });
    await vi.advanceTimersByTimeAsync(1);
    expect(await answer).toEqual({ ok: true });
    expect(hired).toHaveLength(2);
  });

  test('twice fails with a code, and the next request works', async () => {
    const { ask } = connect();
    const failing = caught(ask('draft', given('A')));
    for (const each of [0, 1]) {
      await vi.advanceTimersByTimeAsync(1);
      hired[each]?.crash();
    }
    expect(await failing).toBe('work-failed');
    const next = ask('draft', given('B'));
    await vi.advanceTimersByTimeAsync(1);
    jobs.at(-1)?.done({});
    await vi.advanceTimersByTimeAsync(1);
    await next;
  });

  test('cannot even start: a code', async () => {
    const { ask } = connectWorker(() => {
      throw new Error('no workers here');
    });
    expect(await caught(ask('draft', given('A')))).toBe('work-failed');
  });
});

test('a job without an end is ended', async () => {
  const { ask } = connect();
  const endless = caught(ask('draft', given('A')));
  await vi.advanceTimersByTimeAsync(120_001);
  expect(await endless).toBe('work-slow');
  expect(hired[0]?.gone).toBe(true);
});

test('a worker unused for a minute is let go, and hired anew when needed', async () => {
  const { ask } = connect();
  for (const each of [0, 1]) {
    const answer = ask('draft', given('A'));
    await vi.advanceTimersByTimeAsync(1);
    jobs.at(-1)?.done({});
    await vi.advanceTimersByTimeAsync(59_000);
    await answer;
    expect(hired[each]?.gone).toBe(false);
    await vi.advanceTimersByTimeAsync(2_000);
    expect(hired[each]?.gone).toBe(true);
  }
  expect(hired).toHaveLength(2);
});
