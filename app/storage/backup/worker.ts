/** A thread of its own for the deeds: one message asks for one, one answers it. */
import { StoreError } from '../errors';
import type { Answer, Asked } from './asked';
import { deeds } from './deeds';

const page = self as unknown as Pick<Worker, 'onmessage' | 'postMessage'>;

page.onmessage = async ({ data: { id, deed, given } }: MessageEvent<Asked>) => {
  const work = deeds[deed] as (...given: readonly unknown[]) => Promise<unknown>;
  const answer = await work(...given).then(
    (made): Answer => ({ id, made }),
    (error): Answer => ({ id, code: error instanceof StoreError ? error.code : 'store-broken' }),
  );
  page.postMessage(answer);
};
