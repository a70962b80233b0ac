import { useMemo } from 'preact/hooks';
import type { Draft } from '../../../drafting/draft-types';
import { pencilPlan } from '../../../drafting/pencil';
import { pieceTold } from '../../../drafting/told';
import { useWords } from '../../../parts';
import { LengthTable } from '../length-table';
import { DrawnSoFar } from './drawn-so-far';
import './words.css';

type PieceWordsProps = { readonly draft: Draft; readonly piece: number };

/** A piece as text: its edges in order, and where its points lie, with a drawing that numbers them. */
export function PieceWords({ draft, piece }: PieceWordsProps) {
  const { say, hand } = useWords();
  const plans = useMemo(() => pencilPlan(draft, hand.unit), [draft, hand.unit]);
  const plan = plans[piece];
  const told = plan && pieceTold(draft, plan, { say, units: hand.unit, language: hand.locale });
  if (!plan || !told) return null;
  const { caption, columns, marks } = told.points;
  return (
    <div class="in-words">
      {told.head.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <DrawnSoFar plan={plan} until={Number.POSITIVE_INFINITY} text={told.name} />
      <ul>
        {told.lines.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <p class="soft" aria-hidden="true">
        {caption}
      </p>
      <LengthTable
        label={caption}
        heads={columns}
        rows={marks.map(({ number, x, y }) => ({ key: String(number), name: number, lengths: [x, y] }))}
      />
    </div>
  );
}
