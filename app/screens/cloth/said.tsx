import { useMemo } from 'preact/hooks';
import { bought } from '../../drafting/catalogue';
import type { Answer, LaidCut, Stuff } from '../../drafting/cloth';
import type { Draft } from '../../drafting/draft-types';
import { useWords } from '../../parts';
import { LayPicture } from './lay-picture';
import type { Lay } from './use-lay';

type SaidProps = { readonly lay: Lay; readonly stuff: Stuff; readonly drafts: readonly Draft[] };

/** The answer so far, in a few words and as a picture. */
export function Said({ lay, stuff, drafts }: SaidProps) {
  const { say, hand } = useWords();
  const answer = lay.is === 'failed' ? null : lay.answer;
  const picture = useMemo(
    () => answer?.kind === 'fits' && <LayPicture laid={answer.laid} length={answer.length} stuff={stuff} />,
    [answer, stuff],
  );
  const nameOf = ({ draft, piece }: { readonly draft: number; readonly piece: number }) => {
    const from = drafts[draft];
    const name = say(`piece.${from?.pieces[piece]?.name}`);
    return drafts.length < 2
      ? name
      : say('screen.cloth.whose', { garment: say(`garment.${from?.order.garment}.name`), piece: name });
  };
  return (
    <section class="lay-said">
      <p class="lay-answer" role="status">
        {answerWords()}
      </p>
      {picture}
      {answer?.kind === 'fits' && <Legend laid={answer.laid} nameOf={nameOf} />}
    </section>
  );

  function answerWords(): string {
    if (!answer) return lay.is === 'looking' ? say('screen.cloth.looking') : '';
    if (answer.kind === 'cannot') return say(`screen.cloth.cannot-${answer.why}`, { piece: nameOf(answer.cut) });
    if (answer.kind === 'fits') {
      if ('scrap' in stuff) return say('screen.cloth.fits');
      return say('screen.cloth.takes', { length: bought(answer.length, hand.unit), width: stuff.width });
    }
    if (lay.is === 'looking') return say('screen.cloth.looking');
    const left = [...new Set(answer.left.map(nameOf))];
    return say('screen.cloth.not-found', { seconds: lay.is === 'ended' ? lay.seconds : 0, pieces: left });
  }
}

type LegendProps = { readonly laid: readonly LaidCut[]; readonly nameOf: (cut: Answered) => string };
type Answered = Extract<Answer, { kind: 'cannot' }>['cut'];

/** Which number is which piece, and how many of it there are. */
function Legend({ laid, nameOf }: LegendProps) {
  const kinds = [...new Map(laid.map(({ number, cut }) => [number, cut]))].sort(([one], [other]) => one - other);
  return (
    <ol class="lay-legend">
      {kinds.map(([number, cut]) => (
        <li key={number} value={number}>
          {nameOf(cut)} × {laid.filter((each) => each.number === number).length}
        </li>
      ))}
    </ol>
  );
}
