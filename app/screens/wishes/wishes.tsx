import { useMemo, useState } from 'preact/hooks';
import type { MeasureId } from '../../body';
import { diagram } from '../../measuring';
import { DiagramPicture, Page, TapeLine, useWords } from '../../parts';
import { type Making, tapedOf, wishesOf } from '../shared/making/making';
import { chosenAddress, makingWords } from '../shared/making/outfit';
import { StepsLeft } from '../shared/making/steps-left';
import { WishInputs } from '../shared/making/wish-inputs';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import './wishes.css';

/** What no tape can tell: how long and how deep it is to be, all on one page, each with what is suggested. */
export function WishesScreen({ params }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => <WishesPage making={making} />}
    </WithMaking>
  );
}

function WishesPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, body, steps, screens } = making;
  const [now, setNow] = useState<MeasureId | undefined>(wishesOf(steps)[0]?.measure);
  const { kind, traits, sizes } = body;
  const drawn = useMemo(() => (now ? diagram(kind, traits, sizes, now) : null), [kind, traits, sizes, now]);
  usePlace(toy.id, garment.id, 'wishes');
  const last = tapedOf(steps).at(-1)?.measure;
  return (
    <Page
      wide
      title={say('screen.wishes.title')}
      back={last ? to('toy', toy.id, garment.id, 'measure', last) : chosenAddress(making)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={makingWords(say, making)}
      under={<TapeLine done={screens} all={screens} />}
      end={<StepsLeft making={making} measure={last} />}
      acts={
        <a class="go" href={to('toy', toy.id, garment.id, 'review')}>
          {say('screen.wishes.next')}
        </a>
      }
    >
      <div class="wishes">
        <div class="wishes-figure">{drawn && <DiagramPicture diagram={drawn} say={say} />}</div>
        <div class="wishes-list">
          <p class="soft small">{say('screen.wishes.what')}</p>
          <WishInputs making={making} onLook={setNow} />
        </div>
      </div>
    </Page>
  );
}
