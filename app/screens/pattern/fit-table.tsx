import { unitFace } from '../../body';
import type { Draft } from '../../drafting/draft-types';
import { sayFirst, useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import { LengthTable } from '../shared/length-table';
import '../shared/measure-from.css';

/** How it sits, place by place: the toy, the finished garment, and the room between them. */
export function FitTable({ draft }: { readonly draft: Draft }) {
  const { say, hand } = useWords();
  if (draft.fit.length === 0) return null;
  return (
    <Folded title={say('screen.pattern.fit')} stands={say('screen.pattern.fit-stands', { count: draft.fit.length })}>
      <LengthTable
        label={say('screen.pattern.fit')}
        heads={[
          say('screen.pattern.fit-place'),
          say('screen.pattern.fit-toy', { unit: unitFace(hand) }),
          say('screen.pattern.fit-garment'),
          say('screen.pattern.fit-room'),
        ]}
        rows={draft.fit.map((row) => ({
          key: row.place,
          name: (
            <>
              {sayFirst(say, [`place.${row.place}`, row.place])}
              {row.from === 'estimate' && <span class="measure-from">{say('screen.from.estimate-short')}</span>}
              {row.why && <span class="measure-from">{sayFirst(say, [`why.${row.why}`, row.why])}</span>}
            </>
          ),
          lengths: [row.body, row.garment, row.ease],
        }))}
      />
    </Folded>
  );
}
