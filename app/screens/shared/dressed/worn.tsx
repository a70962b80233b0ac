import { useEffect, useState } from 'preact/hooks';
import type { Body, Order } from '../../../body';
import type { Draft } from '../../../drafting/draft-types';
import { dressed, sidesOf } from '../../../dressed';
import { FigurePicture, GarmentPicture } from '../../../parts';
import { draft, WorkError } from '../../../work/bridge';
import { noteHappening } from '../trouble/happened';

const FRAME = { width: 150, height: 160 };

type WornProps = { readonly body: Body; readonly order: Order };

/** A small picture of this very toy in a garment; the garment alone until it is drawn, and where it cannot be. */
export function Worn({ body, order }: WornProps) {
  const made = useMade(body, order);
  if (!made) return <GarmentPicture id={order.garment} />;
  const worn = dressed(body, made, sidesOf(body, made)[0], FRAME);
  const shows = worn.shapes.some(({ look }) => look === 'cloth');
  return shows ? <FigurePicture figure={worn} /> : <GarmentPicture id={order.garment} />;
}

/** What was drawn a moment ago need not be drawn again when a screen is come back to. */
const drawn = new Map<string, Draft | null>();
const MOST_KEPT = 60;

function useMade(body: Body, order: Order): Draft | null {
  const key = JSON.stringify([body.kind, body.traits, body.sizes, body.corrections, order]);
  const [made, setMade] = useState<Draft | null>(() => drawn.get(key) ?? null);
  useEffect(() => {
    const known = drawn.get(key);
    if (known !== undefined) return setMade(known);
    const stop = new AbortController();
    inTurn(async () => {
      if (stop.signal.aborted) return;
      const outcome = await draft(body, order, '', { signal: stop.signal, lane: 'worn' });
      if (drawn.size >= MOST_KEPT) drawn.clear();
      drawn.set(key, outcome.ok ? outcome.draft : null);
      if (!stop.signal.aborted) setMade(outcome.ok ? outcome.draft : null);
    });
    return () => stop.abort();
  }, [key]);
  return made;
}

let last: Promise<void> = Promise.resolve();

/** One picture after the other: what she waits for is never behind a dozen of them. */
function inTurn(make: () => Promise<void>): void {
  last = last.then(make).catch((error) => {
    if (!(error instanceof WorkError && error.code === 'work-cancelled')) noteHappening(error);
  });
}
