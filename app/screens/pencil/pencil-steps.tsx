import { inTurn, type Say } from '../../body';
import type { Draft, Piece } from '../../drafting/draft-types';
import { drawnWords, joinWords, lineName, type PencilPiece, type PencilStep, pencilSteps } from '../../drafting/pencil';
import { printed, unless, useWords } from '../../parts';
import { useAwake } from '../shared/awake';
import type { Making } from '../shared/making/making';
import { OneStep } from '../shared/one-step/one-step';
import { DrawnSoFar } from '../shared/pieces/drawn-so-far';
import { go, to } from '../shared/route';
import { SpeakAct } from '../shared/speak-act';

type PencilStepsProps = {
  readonly making: Making;
  readonly draft: Draft;
  readonly plan: PencilPiece;
  readonly at: number;
};

/** One point or line at a time, the growing drawing above; a tap on the paper goes on. */
export function PencilSteps({ making: { toy, garment }, draft, plan, at }: PencilStepsProps) {
  const { say, hand } = useWords();
  const steps = pencilSteps(plan);
  const place = Math.min(Math.max(Math.trunc(at) || 0, 0), steps.length - 1);
  const step = steps[place];
  const piece = draft.pieces[plan.piece];
  const here = to('toy', toy.id, garment.id, 'pencil');
  const address = (n: number) => `${here}?piece=${plan.piece}&at=${n}`;
  const { title, rest } = wordsOf(step, piece, say, hand.unit);
  useAwake();
  if (!piece || !step) return null;
  const last = place + 1 >= steps.length;
  const next = last ? `${here}?look=${plan.piece}` : address(place + 1);
  const onward = () => go(next, 'replace');
  return (
    <OneStep
      title={title}
      back={`${here}?look=${plan.piece}`}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`piece.${piece.name}`)}
      progress={{ done: place + 1, all: steps.length }}
      picture={
        <button type="button" class="pencil-tap" aria-label={say('screen.next')} onClick={onward}>
          <DrawnSoFar plan={plan} until={place} text={title} />
        </button>
      }
      acts={
        <>
          <button type="button" class="quiet" {...unless(place === 0, () => go(address(place - 1), 'replace'))}>
            {say('screen.pencil.before')}
          </button>
          <SpeakAct text={say('list.named', { name: title, what: rest })} />
          <button type="button" class="go" onClick={onward}>
            {say(last ? 'screen.done' : 'screen.next')}
          </button>
        </>
      }
    >
      <p class="pencil-rest">{rest}</p>
    </OneStep>
  );
}

/** The one thing to do now, large, and what to mind. */
function wordsOf(step: PencilStep | undefined, piece: Piece | undefined, say: Say, unit: 'in' | 'cm') {
  if (!step || !piece) return { title: '', rest: '' };
  if (step.does === 'mark') {
    const { number, x, y } = step.mark;
    return {
      title: printed(say('screen.pencil.mark', { left: x, bottom: y, unit })),
      rest: say('screen.pencil.point', { number, line: lineName(step.line, piece, say) }),
    };
  }
  const rest = step.ends ? inTurn(drawnWords(step.line, piece, say, unit), say) : say('screen.pencil.goes-on');
  return { title: joinWords(step.join, say), rest };
}
