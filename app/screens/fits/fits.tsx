import { useState } from 'preact/hooks';
import { LONGEST_MM, type Mm } from '../../body';
import type { Draft } from '../../drafting/draft-types';
import { Page, useWords } from '../../parts';
import { wallClock } from '../../storage';
import { madeOf } from '../shared/again/made';
import { since } from '../shared/again/since';
import { SinceList } from '../shared/again/since-list';
import { AmountField } from '../shared/making/amount-field';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { BeforeAfter } from '../shared/trying/before-after';
import { useCorrect } from '../shared/trying/use-correct';
import { type FlatSize, flatSizes } from './flat-sizes';
import { useTakenOver } from './use-taken-over';
import './fits.css';

/** Starting from a garment that fits: what it measures lying flat, in the place of what we would make. */
export function FitsScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <FitsPage making={making} />}</WithPattern>;
}

function FitsPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, row } = making;
  const correct = useCorrect(making);
  const draft = draftOf(useDraft(bodyKnown(making), garment.order, toy.name));
  const [typed, setTyped] = useState<Readonly<Record<string, Mm>>>({});
  const flat = draft ? flatSizes(draft) : [];
  const wanted = flat.flatMap((each) => {
    const mm = typed[each.id];
    return mm === undefined ? [] : [{ ...each, wanted: mm }];
  });
  const taken = useTakenOver(making, draft, wanted);
  const reached = taken.is === 'reached' ? taken.reached : null;
  const at = wallClock();
  return (
    <Page
      wide
      title={say('screen.fits.title')}
      back={to('toy', toy.id, garment.id, 'pattern')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`garment.${garment.order.garment}.name`)}
      acts={
        <button type="button" class="go" disabled={!reached} onClick={() => reached && correct(reached.corrections)}>
          {say('screen.fits.take')}
        </button>
      }
    >
      <div class="columns">
        <div class="column">
          <p>{say('screen.fits.what')}</p>
          <div class="fits-sizes">
            {flat.map((each) => (
              <FlatField key={each.id} flat={each} onChange={(mm) => setTyped({ ...typed, [each.id]: mm })} />
            ))}
          </div>
          <p class="soft small">{say('screen.fits.kept')}</p>
        </div>
        <div class="column">
          <div role="status" class="fits-told">
            {taken.is === 'seeking' && <p class="soft">{say('screen.pattern.drawing')}</p>}
            {taken.is === 'none' && <p>{say('screen.fits.none')}</p>}
            {wanted
              .filter((each) => draft && isUnderBody(each, draft))
              .map((each) => (
                <p key={each.id}>{say('screen.fits.under', { place: say(`flat.${each.id}`), name: toy.name })}</p>
              ))}
            {reached?.missed.map((each) => (
              <p key={each.id}>{say('screen.fits.missed', { place: say(`flat.${each.id}`) })}</p>
            ))}
          </div>
          {reached && draft && (
            <>
              <SinceList
                since={since(madeOf(draft, making, at), madeOf(reached.draft, making, at), row, true)}
                before={say('screen.fits.before')}
              />
              <BeforeAfter before={draft} after={reached.draft} />
            </>
          )}
        </div>
      </div>
    </Page>
  );
}

/** Nothing lies narrower or shorter, mm. */
const LEAST_MM = 10;

function FlatField({ flat, onChange }: { readonly flat: FlatSize; readonly onChange: (mm: Mm) => void }) {
  const { say } = useWords();
  const [mm, setMm] = useState<Mm | null>(null);
  return (
    <AmountField
      legend={say(`flat.${flat.id}`)}
      note={say('screen.fits.ours', { length: flat.now })}
      kind={{ kind: 'length', min: LEAST_MM, max: LONGEST_MM, fallback: 0 }}
      value={mm}
      onChange={(typed) => {
        setMm(typed);
        onChange(typed);
      }}
    />
  );
}

/** Whether a garment that lies so wide would not close round this toy. */
function isUnderBody({ way, point, wanted }: FlatSize & { readonly wanted: Mm }, { fit }: Draft): boolean {
  const place = point.id === 'seat' ? 'hip' : point.id;
  const row = fit.find((each) => each.place === place);
  return way === 'across' && row !== undefined && 2 * wanted < row.body;
}
