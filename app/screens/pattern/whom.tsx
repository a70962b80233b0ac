import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import { Gap, sayFirst, useWords } from '../../parts';
import { listToys, readingsOf } from '../../storage';
import { Folded } from '../shared/folded/folded';
import { bodyOf } from '../shared/making/body-of';
import type { Making } from '../shared/making/making';
import { to } from '../shared/route';
import { noteHappening } from '../shared/trouble/happened';
import { canWear, labelOf } from './wearers';

/** More toys than these are not tried: nobody reads on. */
const MOST_TRIED = 300;

type Wearer = { readonly id: string; readonly name: string };
type WhomProps = { readonly draft: Draft; readonly making: Making };

/** Which other toys of hers can wear it as it is drawn, and what stands on a label. */
export function Whom({ draft, making }: WhomProps) {
  const { say } = useWords();
  const [asked, setAsked] = useState(false);
  const { wearers, alone } = useWearers(asked, draft, making);
  const label = labelOf(draft, making.body);
  return (
    <Folded title={say('screen.whom.title')} stands={say('screen.whom.stands')} onOpen={() => setAsked(true)}>
      <div class="told">
        {wearers && (wearers.length > 0 || !alone || !label) && (
          <p>
            {wearers.length === 0 ? say('screen.whom.none') : say('screen.whom.these')}
            <Gap />
            {wearers.map(({ id, name }) => (
              <a key={id} class="whom" href={to('toy', id)}>
                {name}
              </a>
            ))}
          </p>
        )}
        {label && (
          <p>
            {say('screen.whom.label', {
              place: sayFirst(say, [`place.${label.place}`, label.place]),
              least: label.range.least,
              most: label.range.most,
            })}
            <Gap />
            {label.head && say('screen.whom.head', { head: label.head })}
          </p>
        )}
      </div>
    </Folded>
  );
}

/** Who can wear it, null until she asks; `alone`: she has no other toy, and is not told that none of them can. */
type Wearers = { readonly wearers: readonly Wearer[] | null; readonly alone: boolean };

/** Looked for once she asks. */
function useWearers(asked: boolean, draft: Draft, { toy, body }: Making): Wearers {
  const [known, setKnown] = useState<Wearers>({ wearers: null, alone: false });
  useEffect(() => {
    if (!asked) return;
    let stale = false;
    const look = async () => {
      const rest = (await listToys()).filter(({ id }) => id !== toy.id);
      const others = rest.filter(({ kind }) => kind === toy.kind).slice(0, MOST_TRIED);
      const found: Wearer[] = [];
      for (const other of others) {
        const readings = await readingsOf(other.id);
        if (canWear(draft, body, bodyOf({ toy: other, readings }))) found.push({ id: other.id, name: other.name });
      }
      if (!stale) setKnown({ wearers: found, alone: rest.length === 0 });
    };
    look().catch(noteHappening);
    return () => {
      stale = true;
    };
  }, [asked, draft]);
  return known;
}
