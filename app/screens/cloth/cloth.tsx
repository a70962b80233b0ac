import { useMemo, useState } from 'preact/hooks';
import { cloths } from '../../drafting/catalogue';
import type { Layer } from '../../drafting/cloth';
import type { Draft } from '../../drafting/draft-types';
import { garmentsIn } from '../../drafting/outfit';
import { Page, useWords } from '../../parts';
import { printCloth } from '../../work/bridge';
import { Checks } from '../shared/checks/checks';
import type { Making } from '../shared/making/making';
import { makingWords, wholeAddress } from '../shared/making/outfit';
import { draftOf } from '../shared/making/use-draft';
import { useWholeDraft } from '../shared/making/use-whole-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { PdfAct, ReadAct } from '../shared/pdf-act';
import { usePlace } from '../shared/places';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { toggled } from '../shared/toggled';
import { troubleWords } from '../shared/trouble/attempt';
import { useAlso } from './also';
import { mayImprove } from './may-improve';
import { Said } from './said';
import { ScrapPhoto } from './scrap-photo';
import { type Piecework, StuffPicks, stuffOf } from './stuff-picks';
import { useDrafts, useLay } from './use-lay';
import { soldWidths, usualScrap } from './widths';
import './cloth.css';

const LAYERS: readonly Layer[] = ['main', 'facing', 'lining', 'rib'];

/** What an address says while a scrap's outline is tapped on a photo. */
const PHOTO = 'photo';

/** How long is looked at first, and when she wants it looked for longer, s. */
const FIRST_S = 6;
const LONGER_S = 30;

/** Is this cloth enough? On cloth sold by its width, or on a scrap. */
export function ClothScreen({ params, query }: ScreenProps) {
  const here = to('toy', params.toy ?? '', params.garment ?? '', 'cloth');
  return (
    <WithPattern params={params} several>
      {(making) => <Cloth making={making} here={here} byPhoto={query.has(PHOTO)} />}
    </WithPattern>
  );
}

type ClothProps = {
  readonly making: Making;
  readonly here: string;
  /** A scrap's outline is being tapped on a photo. */
  readonly byPhoto: boolean;
};

function Cloth({ making, ...at }: ClothProps) {
  const { toy, garment } = making;
  const drawn = useWholeDraft(making);
  const own = draftOf(drawn);
  usePlace(toy.id, garment.id, 'cloth');
  return own ? <OnCloth making={making} own={own} {...at} /> : <main class="loading" aria-busy="true" />;
}

function OnCloth({ making, own, here, byPhoto }: ClothProps & { readonly own: Draft }) {
  const { say, hand } = useWords();
  const { toy } = making;
  const made = useMemo(() => ofOneCloth(own), [own]);
  const known = useAlso(making);
  const [also, setAlso] = useState<readonly Making[]>([]);
  const drafts = useDrafts(made, also);
  const layers = useMemo(() => layersOf(drafts ?? made), [drafts, made]);
  const [without, setWithout] = useState<readonly Layer[]>(['lining', 'rib']);
  const [picked, setPicked] = useState<Piecework>({
    kind: 'width',
    width: soldWidths(hand.unit)[0] ?? 1100,
    ...usualScrap(hand.unit),
    outline: null,
  });
  const [nap, setNap] = useState(made.some(isNapped));
  const [seconds, setSeconds] = useState(FIRST_S);
  const taken = layers.filter((layer) => !without.includes(layer));
  const stuff = useMemo(() => stuffOf(picked, nap), [picked, nap]);
  const wanted = useMemo(
    () => (drafts && taken.length > 0 ? { drafts, layers: taken, stuff } : null),
    [drafts, taken.join(), stuff],
  );
  const lay = useLay(wanted, seconds);
  const answer = lay.is === 'failed' ? null : lay.answer;
  const anew =
    <A,>(set: (value: A) => void) =>
    (value: A) => {
      setSeconds(FIRST_S);
      set(value);
    };
  const name = makingWords(say, making);
  const file = [toy.name, name, say('screen.cloth.file')].join(' ');
  const whose = <a href={to('toy', toy.id)}>{toy.name}</a>;
  if (byPhoto)
    return (
      <ScrapPhoto
        back={here}
        whose={whose}
        detail={name}
        onUse={(outline) => {
          anew(setPicked)({ ...picked, kind: 'scrap', outline });
          go(here, 'replace');
        }}
      />
    );
  return (
    <Page
      wide
      title={say('screen.cloth.title')}
      back={wholeAddress(making)}
      whose={whose}
      detail={name}
      acts={
        lay.is === 'looking' ? (
          <button type="button" class="plain" onClick={lay.stop}>
            {say('screen.cloth.stop')}
          </button>
        ) : (
          answer?.kind === 'fits' &&
          drafts && (
            <PdfAct
              words={say('screen.cloth.save')}
              name={file}
              make={(asked) => printCloth({ drafts, stuff, laid: answer.laid, length: answer.length }, asked)}
            />
          )
        )
      }
    >
      <div class="columns">
        <div class="column">
          {lay.is === 'failed' && <p class="slip warn">{troubleWords(say, lay.code)}</p>}
          {lay.is === 'looking' && (
            <progress class="lay-progress" value={lay.share} aria-label={say('screen.cloth.looking')} />
          )}
          <Said lay={lay} stuff={stuff} drafts={drafts ?? made} />
          {lay.is === 'ended' && answer && mayImprove(answer, stuff) && seconds < LONGER_S && (
            <button type="button" class="quiet" onClick={() => setSeconds(LONGER_S)}>
              {say('screen.cloth.longer', { seconds: LONGER_S })}
            </button>
          )}
        </div>
        <div class="column">
          <StuffPicks picked={picked} onPick={anew(setPicked)} photo={`${here}?${PHOTO}`} />
          <Checks
            legend={say('screen.cloth.lies')}
            rows={[{ value: 'nap', words: say('screen.cloth.nap'), on: nap }]}
            onToggle={() => anew(setNap)(!nap)}
          />
          {layers.length > 1 && (
            <Checks
              legend={say('screen.cloth.layers')}
              rows={layers.map((layer) => ({ value: layer, words: say(`layer.${layer}`), on: taken.includes(layer) }))}
              onToggle={(layer) => anew(setWithout)(toggled(without, layer))}
            />
          )}
          {known.length > 0 && (
            <Checks
              legend={say('screen.cloth.also')}
              rows={known.map((each) => ({
                value: each,
                words: say(`garment.${each.garment.order.garment}.name`),
                on: also.includes(each),
              }))}
              onToggle={(each) => anew(setAlso)(toggled(also, each))}
            />
          )}
          <p class="soft small">{say('screen.cloth.strips')}</p>
          {answer?.kind === 'fits' && drafts && (
            <ReadAct
              name={file}
              what={() => ({ of: 'cloth', laid: { drafts, stuff, laid: answer.laid, length: answer.length } })}
            />
          )}
        </div>
      </div>
    </Page>
  );
}

/** What the drafts are cut from; strips are no matter of a lay. */
function layersOf(drafts: readonly Draft[]): readonly Layer[] {
  const places = drafts.flatMap(({ notions }) =>
    notions.filter(({ kind }) => kind === 'cloth').map(({ place }) => place),
  );
  return LAYERS.filter((layer) => places.includes(layer));
}

/** Of an outfit what is cut from the first garment's cloth; whatever is of another may still be cut along. */
const ofOneCloth = (own: Draft) => garmentsIn(own).filter(({ order }) => order.cloth === own.order.cloth);

const isNapped = ({ order }: Draft): boolean => cloths.some(({ id, nap }) => id === order.cloth && nap);
