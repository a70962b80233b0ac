import { useMemo } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import { headWords, type PencilPiece, pencilPlan } from '../../drafting/pencil';
import { Page, Picks, useWords } from '../../parts';
import { printPencil } from '../../work/bridge';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { PdfAct, ReadAct } from '../shared/pdf-act';
import { DrawnSoFar } from '../shared/pieces/drawn-so-far';
import { usePlace } from '../shared/places';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { PencilSteps } from './pencil-steps';
import './pencil.css';

/** Drawing by hand: without `?piece=` which piece, and what paper it needs; with one, a point at a time. */
export function PencilScreen({ params, query }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <Pencil making={making} query={query} />}</WithPattern>;
}

function Pencil({ making, query }: { readonly making: Making; readonly query: URLSearchParams }) {
  const { hand } = useWords();
  const { toy, garment } = making;
  const drawn = useDraft(bodyKnown(making), garment.order, toy.name);
  const draft = draftOf(drawn);
  const plans = useMemo(() => (draft ? pencilPlan(draft, hand.unit) : []), [draft, hand.unit]);
  usePlace(toy.id, garment.id, 'pencil');
  const chosen = plans[Number(query.get('piece') ?? Number.NaN)];
  if (draft && chosen)
    return <PencilSteps making={making} draft={draft} plan={chosen} at={Number(query.get('at') ?? 0)} />;
  return <Pieces making={making} draft={draft} plans={plans} piece={Number(query.get('look') ?? 0)} />;
}

type PiecesProps = {
  readonly making: Making;
  readonly draft: Draft | null;
  readonly plans: readonly PencilPiece[];
  readonly piece: number;
};

function Pieces({ making: { toy, garment }, draft, plans, piece }: PiecesProps) {
  const { say, hand } = useWords();
  const name = say(`garment.${garment.order.garment}.name`);
  const here = to('toy', toy.id, garment.id, 'pencil');
  const file = [toy.name, name, say('screen.pencil.file')].join(' ');
  const plan = plans[piece] ?? plans[0];
  const drawn = plan && draft?.pieces[plan.piece];
  return (
    <Page
      title={say('screen.pencil.title')}
      back={to('toy', toy.id, garment.id, 'print')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={name}
      acts={
        plan &&
        draft && (
          <>
            <PdfAct words={say('screen.pencil.save')} name={file} make={(asked) => printPencil(draft, asked)} />
            <a class="go" href={`${here}?piece=${plan.piece}`}>
              {say('screen.pencil.begin')}
            </a>
          </>
        )
      }
    >
      <p>{say('screen.pencil.what')}</p>
      {draft && plan && (
        <Picks
          legend={say('screen.pencil.which')}
          chosen={String(plan.piece)}
          onPick={(value) => go(`${here}?look=${value}`, 'replace')}
          picks={plans.map(({ piece: index }) => ({
            value: String(index),
            words: say(`piece.${draft.pieces[index]?.name}`),
          }))}
        />
      )}
      {plan && drawn && (
        <section class="pencil-piece">
          {headWords(plan, drawn, say, hand.unit).map((words) => (
            <p key={words}>{words}</p>
          ))}
          <DrawnSoFar plan={plan} until={Infinity} text={say(`piece.${drawn.name}`)} />
        </section>
      )}
      {draft && <ReadAct name={file} what={() => ({ of: 'pencil', draft })} />}
    </Page>
  );
}
