import { trustedAddress } from '../../work/trusted-address';
import { tellWritten } from '../connection';
import { StoreError } from '../errors';
import type { Answer, Asked, Deeds } from './asked';
import workerAddress from './worker?worker&url';

type Waiting = Asked & { readonly made: (value: unknown) => void; readonly failed: (error: unknown) => void };

/** The deeds, done elsewhere; `close` lets the thread and whatever it holds go. */
export type Desk = Deeds & { readonly close: () => void };

/**
 * Opens a thread for backups, so that the page never waits for one, however many toys there are. Where no thread can be
 * had they are done here. Every deed rejects with StoreError.
 */
export function openDesk(): Desk {
  const waiting = new Map<number, Waiting>();
  let last = 0;
  let worker: Worker | 'none' | undefined;

  const ask = (deed: keyof Deeds, given: readonly unknown[]) =>
    new Promise<unknown>((made, failed) => {
      const asked = { id: ++last, deed, given };
      worker ??= hire();
      if (worker === 'none') return doHere({ ...asked, made, failed });
      waiting.set(asked.id, { ...asked, made, failed });
      worker.postMessage(asked satisfies Asked);
    });

  const hire = (): Worker | 'none' => {
    try {
      const hired = new Worker(trustedAddress(workerAddress), { type: 'module' });
      hired.onmessage = ({ data }: MessageEvent<Answer>) => answered(data);
      hired.onerror = () => {
        worker = 'none';
        for (const asked of waiting.values()) doHere(asked);
        waiting.clear();
      };
      return hired;
    } catch {
      return 'none';
    }
  };

  const answered = (answer: Answer) => {
    const asked = waiting.get(answer.id);
    waiting.delete(answer.id);
    if ('code' in answer) asked?.failed(new StoreError(answer.code));
    else asked?.made(answer.made);
  };

  const close = () => {
    if (worker !== 'none') worker?.terminate();
    worker = undefined;
  };
  const elsewhere = <D extends keyof Deeds>(deed: D) =>
    ((...given: readonly unknown[]) => ask(deed, given)) as unknown as Deeds[D];
  return {
    save: elsewhere('save'),
    look: elsewhere('look'),
    lookAtCopy: elsewhere('lookAtCopy'),
    restore: (way) => elsewhere('restore')(way).then(tellWritten),
    copy: elsewhere('copy'),
    copies: elsewhere('copies'),
    dropCopies: elsewhere('dropCopies'),
    together: (folder) =>
      elsewhere('together')(folder).then((found) => {
        tellWritten();
        return found;
      }),
    close,
  };
}

function doHere({ deed, given, made, failed }: Waiting): void {
  const work = async () => {
    const { deeds } = await import('./deeds');
    const one = deeds[deed] as (...given: readonly unknown[]) => Promise<unknown>;
    return one(...given);
  };
  work().then(made, failed);
}
