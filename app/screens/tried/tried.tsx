import { useState } from 'preact/hooks';
import type { Mm } from '../../body';
import { Page, Picks, useWords } from '../../parts';
import { changeToy } from '../../storage';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { useNotice } from '../shared/trouble/notice';
import { Learnt } from '../shared/trying/learnt';
import { type TriedPoint, triedPoints, type Wrong, wrongsAt } from '../shared/trying/points';
import type { Proposal } from '../shared/trying/propose';
import { BeforeAfter } from './before-after';
import { PointsFigure } from './points-figure';
import { useProposal } from './use-proposal';
import './tried.css';

/** Trying on: where it does not sit, by how much, and what then changes on the paper. */
export function TriedScreen({ params }: ScreenProps) {
  return <WithMaking params={params}>{(making) => <TriedPage making={making} />}</WithMaking>;
}

function TriedPage({ making }: { readonly making: Making }) {
  const { toy, garment } = making;
  const { say, hand } = useWords();
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
      acts={<Accept making={making} proposal={proposal.is === 'proposed' ? proposal.proposal : null} />}
    >
      <PointsFigure body={making.body} points={offered} chosen={point} onChoose={setPoint} />
      {draft && !point && <p>{say(offered.length > 0 ? 'screen.tried.point' : 'screen.tried.nowhere')}</p>}
      {point && draft && (
        <>
          <Picks
            legend={say(`tried.${point.id}`)}
            chosen={wrong ?? ''}
            onPick={(value) => setSaid(open.find((each) => each === value) ?? null)}
            picks={open.map((value) => ({ value, words: say(`screen.tried.${value}`) }))}
          />
          {wrong && (
            <Picks
              legend={say('screen.tried.how-much')}
              chosen={String(amount ?? '')}
              onPick={(value) => setAmount(Number(value))}
              picks={amounts[hand.unit].map((mm, index) => ({
                value: String(mm),
                words: index === 0 ? say('screen.tried.little') : say('screen.tried.by', { by: mm, unit: hand.unit }),
              }))}
            />
          )}
        </>
      )}
      <div role="status" class="tried-told">
        {proposal.is === 'seeking' && <p class="soft">{say('screen.pattern.drawing')}</p>}
        {proposal.is === 'none' && <p>{say('screen.tried.cannot')}</p>}
        {proposal.is === 'proposed' && <Told making={making} point={point} proposal={proposal.proposal} />}
      </div>
      {proposal.is === 'proposed' && draft && <BeforeAfter before={draft} after={proposal.proposal.draft} />}
      <Learnt toy={toy} />
    </Page>
  );
}

/** What a maker may choose between where she does not know to the hair, mm: a little first. */
const amounts = { in: [3.175, 6.35, 12.7, 25.4], cm: [3, 5, 10, 20] } as const satisfies Record<
  'in' | 'cm',
  readonly Mm[]
>;

type ToldProps = { readonly making: Making; readonly point: TriedPoint | null; readonly proposal: Proposal };

function Told({ making: { toy, garment }, point, proposal: { lead, by, again } }: ToldProps) {
  const { say, hand } = useWords();
  return (
    <>
      <p>
        {say(by > 0 ? 'screen.tried.more' : 'screen.tried.less', {
          size: say(`size.${lead}`),
          by: Math.abs(by),
          name: toy.name,
          unit: hand.unit,
        })}
      </p>
      {again && point && (
        <p>
          {say('screen.tried.again')}{' '}
          <a href={`${to('toy', toy.id, garment.id, 'measure', point.check)}?then=pattern`}>
            {say(`measure.${point.check}.name`)}
          </a>
        </p>
      )}
    </>
  );
}

function Accept({
  making: { toy, garment },
  proposal,
}: {
  readonly making: Making;
  readonly proposal: Proposal | null;
}) {
  const { say } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  const accept = () =>
    attempt(async () => {
      if (!proposal) return;
      const before = toy.corrections;
      await changeToy(toy.id, { corrections: proposal.corrections });
      go(to('toy', toy.id, garment.id, 'pattern'));
      notice({
        words: say('screen.tried.kept', { name: toy.name }),
        act: {
          words: say('screen.undo'),
          run: () => void attempt(async () => void (await changeToy(toy.id, { corrections: before }))),
        },
      });
    });
  if (!proposal)
    return (
      <a class="go" href={to('toy', toy.id, garment.id, 'pattern')}>
        {say('screen.tried.sits')}
      </a>
    );
  return (
    <button type="button" class="go" onClick={accept}>
      {say('screen.tried.change')}
    </button>
  );
}
