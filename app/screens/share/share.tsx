import { useMemo, useState } from 'preact/hooks';
import type { Card } from '../../body';
import { Page, useWords } from '../../parts';
import type { Toy } from '../../storage';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { WithToy } from '../shared/with-toy';
import { cardWith, type Part, partsIn } from './chosen';
import { MoreWays, SendActs } from './outgoing-acts';
import { PartPicks } from './part-picks';
import { useAddress } from './use-address';
import { type Outgoing, useOutgoing, useWholeCard } from './use-outgoing';
import './share.css';

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
  const outgoing = making.is === 'ready' ? making.outgoing : null;
  return (
    <Page
      title={say('screen.share.title', { name: toy.name })}
      back={to('toy', toy.id)}
      acts={outgoing && <SendActs outgoing={outgoing} name={toy.name} />}
    >
      <div class="card-shown" aria-busy={making.is === 'making'}>
        {outgoing && <Shown outgoing={outgoing} name={toy.name} />}
      </div>
      {making.is === 'failed' && (
        <p class="wrong-words" role="alert">
          {say('screen.share.failed')}
        </p>
      )}
      {outgoing && outgoing.leftOut.length > 0 && <LeftOut parts={outgoing.leftOut} />}
      {whole && <PartPicks parts={partsIn(whole)} left={left} onLeft={setLeft} />}
      {outgoing && <MoreWays outgoing={outgoing} name={toy.name} />}
      <p class="soft small">{say('screen.share.private')}</p>
    </Page>
  );
}

function Shown({ outgoing, name }: { readonly outgoing: Outgoing; readonly name: string }) {
  const { say } = useWords();
  const address = useAddress(outgoing.png);
  return address && <img class="card-picture" src={address} alt={say('card.picture', { name })} />;
}

/** The QR and the link are small: said when something does not fit in. */
function LeftOut({ parts }: { readonly parts: readonly string[] }) {
  const { say } = useWords();
  return <p class="slip">{say('screen.share.left-out', { parts: parts.map((part) => say(`card.part.${part}`)) })}</p>;
}

const chosen = (whole: Card, left: ReadonlySet<Part>): Card =>
  cardWith(whole, new Set(partsIn(whole).filter((part) => !left.has(part))));
