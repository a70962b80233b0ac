import { useEffect, useState } from 'preact/hooks';
import type { CardResult } from '../../sharing';
import { type Arrival, useArrivals } from '../shared/arrivals';
import { noteHappening } from '../shared/trouble/happened';
import { unpack } from './unpack';

const REFUSED: CardResult = { ok: false, fault: { code: 'too-large', where: '' } };

export type Reading =
  | { readonly is: 'none' }
  | { readonly is: 'reading' }
  | { readonly is: 'read'; readonly result: CardResult };

/**
 * The card in what came in: the first that can be read, else what is wrong with the last. `shared`: look into the inbox,
 * or say why what another app shared was not taken in; null when nothing was.
 */
export function useCard(shared: string | null): Reading {
  const arrivals = useArrivals();
  const [reading, setReading] = useState<Reading>({ is: shared === '' || arrivals.length > 0 ? 'reading' : 'none' });
  useEffect(() => {
    let stale = false;
    const read = async () => {
      if (arrivals.length === 0 && shared === 'too-large') return setReading({ is: 'read', result: REFUSED });
      const things = arrivals.length === 0 && shared === '' ? await inbox() : arrivals;
      if (stale) return;
      setReading({ is: things.length > 0 ? 'reading' : 'none' });
      const result = await firstCard(things);
      if (!stale && result) setReading({ is: 'read', result });
    };
    read().catch(noteHappening);
    return () => {
      stale = true;
    };
  }, [arrivals, shared]);
  return reading;
}

async function firstCard(things: readonly Arrival[]): Promise<CardResult | null> {
  const { readArrival } = await import('../../sharing');
  let result: CardResult | null = null;
  for (const thing of things) {
    result = await readArrival(thing, unpack);
    if (result.ok) return result;
  }
  return result;
}

/** What other apps shared; a store that cannot be opened holds nothing. */
async function inbox(): Promise<readonly Arrival[]> {
  const { takeShared } = await import('../../sharing/inbox');
  return takeShared().catch((error) => {
    noteHappening(error);
    return [];
  });
}
