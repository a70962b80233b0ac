import { useMemo, useState } from 'preact/hooks';
import type { Card } from '../../body';
import { Page, useWords } from '../../parts';
import type { Toy } from '../../storage';
import { to } from '../route';
import { lazily } from '../shell/lazily';
import type { ScreenProps } from '../shell/screens';
import { WithToy } from '../with-toy';
import { cardWith, type Part, partsIn } from './chosen';
import { OutgoingActs } from './outgoing-acts';
import { PartPicks } from './part-picks';
import { useOutgoing, useWholeCard } from './use-outgoing';
import './share.css';

const CardPicture = lazily(async () => (await import('../../parts/card-picture')).CardPicture);

/** A toy's card, seen before it goes: as a picture, a link, a file or on paper, with what the maker chose to be in it. */
export function ShareScreen({ params }: ScreenProps) {
  return <WithToy toyId={params.toy ?? ''}>{({ toy }) => <SharePage toy={toy} />}</WithToy>;
}

function SharePage({ toy }: { readonly toy: Toy }) {
  const { say } = useWords();
  const whole = useWholeCard(toy.id);
  const [left, setLeft] = useState<ReadonlySet<Part>>(new Set());
  const card = useMemo(() => whole && chosen(whole, left), [whole, left]);
  const making = useOutgoing(card);
  return (
    <Page
      title={say('screen.share.title', { name: toy.name })}
      back={to('toy', toy.id)}
      acts={making.is === 'ready' && <OutgoingActs outgoing={making.outgoing} name={toy.name} />}
    >
      <div class="card-shown" aria-busy={making.is === 'making'}>
        {making.is === 'ready' && (
          <CardPicture drawing={making.outgoing.drawing} text={say('card.picture', { name: toy.name })} />
        )}
      </div>
      {making.is === 'failed' && (
        <p class="wrong-words" role="alert">
          {say('screen.share.failed')}
        </p>
      )}
      {making.is === 'ready' && making.outgoing.leftOut.length > 0 && <LeftOut parts={making.outgoing.leftOut} />}
      {whole && <PartPicks parts={partsIn(whole)} left={left} onLeft={setLeft} />}
      <p class="soft small">{say('screen.share.private')}</p>
    </Page>
  );
}

/** The QR and the link are small: said when something does not fit in. */
function LeftOut({ parts }: { readonly parts: readonly string[] }) {
  const { say, hand } = useWords();
  const list = new Intl.ListFormat(hand.locale).format(parts.map((part) => say(`card.part.${part}`)));
  return <p class="slip">{say('screen.share.left-out', { parts: list })}</p>;
}

const chosen = (whole: Card, left: ReadonlySet<Part>): Card =>
  cardWith(whole, new Set(partsIn(whole).filter((part) => !left.has(part))));
