import { useState } from 'preact/hooks';
import type { Mm } from '../../body';
import { Gap, Page, Picks, useWords } from '../../parts';
import { InSight } from '../shared/in-sight';
import { AmountField } from '../shared/making/amount-field';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { BeforeAfter } from '../shared/trying/before-after';
import { Learnt } from '../shared/trying/learnt';
import { type TriedPoint, triedPoints, type Wrong, wrongsAt } from '../shared/trying/points';
import type { Proposal } from '../shared/trying/propose';
import { useCorrect } from '../shared/trying/use-correct';
import { PointsFigure } from './points-figure';
import { useProposal } from './use-proposal';
import './tried.css';

/** Trying on: where it does not sit, by how much, and what then changes on the paper. */
export function TriedScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <TriedPage making={making} />}</WithPattern>;
}

function TriedPage({ making }: { readonly making: Making }) {
  const { toy, garment } = making;
  const { say } = useWords();
  const draft = draftOf(useDraft(bodyKnown(making), garment.order, toy.name));
  const [point, setPoint] = useState<TriedPoint | null>(null);
  const [said, setSaid] = useState<Wrong | null>(null);
  const [amount, setAmount] = useState<Mm | null>(null);
  usePlace(toy.id, garment.id, 'tried');
  const offered = draft ? triedPoints.filter((each) => wrongsAt(each, draft).length > 0) : [];
  const open = draft && point ? wrongsAt(point, draft) : [];
  const wrong = open.find((each) => each === said) ?? null;
  const proposal = useProposal(making, draft, point && wrong && amount !== null ? { point, wrong, amount } : null);
  const name = say(`garment.${garment.order.garment}.name`);
  return (
    <Page
      title={say('screen.tried.title')}
      back={to('toy', toy.id, garment.id, 'sew')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={name}
      acts={
        <Accept
          making={making}
          sits={wrong === null}
          proposal={proposal.is === 'proposed' ? proposal.proposal : null}
        />
      }
    >
      <PointsFigure body={making.body} draft={draft} points={offered} chosen={point} onChoose={setPoint}>
        {draft && !point && <p>{say(offered.length > 0 ? 'screen.tried.point' : 'screen.tried.nowhere')}</p>}
      </PointsFigure>
      {point && draft && (
        <>
          <InSight key={point.id} class="tried-asked">
            <Picks
              legend={say(`tried.${point.id}`)}
              chosen={wrong ?? ''}
              onPick={(value) => setSaid(open.find((each) => each === value) ?? null)}
              picks={open.map((value) => ({ value, words: say(`screen.tried.${value}`) }))}
            />
          </InSight>
          {wrong && <HowMuch amount={amount} onAmount={setAmount} />}
        </>
      )}
      <div role="status" class="tried-told">
        {proposal.is === 'seeking' && <p class="soft">{say('screen.pattern.drawing')}</p>}
        {proposal.is === 'none' && <p>{say('screen.tried.cannot')}</p>}
        {proposal.is === 'proposed' && <Told making={making} point={point} proposal={proposal.proposal} />}
      </div>
      {proposal.is === 'proposed' && draft && (
        <InSight class="tried-asked">
          <BeforeAfter before={draft} after={proposal.proposal.draft} />
        </InSight>
      )}
      <Learnt toy={toy} />
    </Page>
  );
}

/** What a maker may choose between where she does not know to the hair, mm: a little first. */
const amounts = { in: [3.175, 6.35, 12.7, 25.4], cm: [3, 5, 10, 20] } as const satisfies Record<
  'in' | 'cm',
  readonly Mm[]
>;

/** No garment is off by more, mm; nor felt to be by less. */
const MOST_MM = 300;
const LEAST_MM = 0.5;

type HowMuchProps = { readonly amount: Mm | null; readonly onAmount: (amount: Mm) => void };

/** About how much, or just how much where she has measured it. */
function HowMuch({ amount, onAmount }: HowMuchProps) {
  const { say, hand } = useWords();
  return (
    <InSight class="tried-asked">
      <Picks
        legend={say('screen.tried.how-much')}
        chosen={String(amount ?? '')}
        onPick={(value) => onAmount(Number(value))}
        picks={amounts[hand.unit].map((mm, index) => ({
          value: String(mm),
          words: index === 0 ? say('screen.tried.little') : say('screen.tried.by', { by: mm, unit: hand.unit }),
        }))}
      />
      <AmountField
        legend={say('screen.tried.exactly')}
        kind={{ kind: 'length', min: LEAST_MM, max: MOST_MM, fallback: 0 }}
        value={amount}
        onChange={onAmount}
      />
    </InSight>
  );
}

type ToldProps = { readonly making: Making; readonly point: TriedPoint | null; readonly proposal: Proposal };

function Told({ making: { toy, garment }, point, proposal: { lead, by, again } }: ToldProps) {
  const { say, hand } = useWords();
  return (
    <>
      <p>
        {say(by > 0 ? 'screen.tried.more' : 'screen.tried.less', {
          size: say(`size.${lead}`),
          by: Math.abs(by),
          unit: hand.unit,
        })}
      </p>
      {again && point && (
        <p>
          {say('screen.tried.again')}
          <Gap />
          <a href={`${to('toy', toy.id, garment.id, 'measure', point.check)}?then=pattern`}>
            {say(`measure.${point.check}.name`)}
          </a>
        </p>
      )}
    </>
  );
}

type AcceptProps = { readonly making: Making; readonly sits: boolean; readonly proposal: Proposal | null };

/** It sits until she says where it does not; from then on it can only be changed, once there is something to change. */
function Accept({ making, sits, proposal }: AcceptProps) {
  const { say } = useWords();
  const correct = useCorrect(making);
  if (sits)
    return (
      <a class="go" href={to('toy', making.toy.id, making.garment.id, 'pattern')}>
        {say('screen.tried.sits')}
      </a>
    );
  return (
    <button type="button" class="go" disabled={!proposal} onClick={() => proposal && correct(proposal.corrections)}>
      {say('screen.tried.change')}
    </button>
  );
}
