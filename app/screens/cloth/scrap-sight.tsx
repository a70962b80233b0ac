import { useMemo, useState } from 'preact/hooks';
import type { SeenOutline } from '../../measuring/photo';
import { unless, useWords } from '../../parts';
import { Line } from '../shared/photo/line';
import { CARD_MARKS, isCoarse, type Marks, type Sort } from '../shared/photo/marks';
import { roundedUp } from '../shared/photo/rounded-up';
import { type Heads, Sight } from '../shared/photo/sight';
import { SightActs } from '../shared/photo/sight-acts';
import { FIRST_EDGE, grown, newMarks, oneBack, verdictOf } from './scrap-marks';
import { ScrapTold } from './scrap-told';

type ScrapSightProps = Heads & {
  readonly picture: HTMLCanvasElement;
  readonly onUse: (outline: SeenOutline) => void;
  readonly onOther: () => void;
};

/** The photo with marks on the card's corners, along a thread, and on as many corners as the scrap has. */
export function ScrapSight({ picture, onUse, onOther, ...header }: ScrapSightProps) {
  const { say, hand } = useWords();
  const [marks, setMarks] = useState(() => newMarks(picture));
  const verdict = useMemo(() => verdictOf(marks, picture), [marks, picture]);
  const sorts = marks.map((_, at): Sort => {
    if (at < CARD_MARKS) return { group: 'corner', tag: String(at + 1), name: say(`photo.mark-${at + 1}`) };
    if (at < FIRST_EDGE) return { group: 'thread', tag: '', name: say(`photo.thread-${at - CARD_MARKS + 1}`) };
    const corner = at - FIRST_EDGE + 1;
    return { group: 'edge', tag: String(corner), name: say('photo.scrap-corner', { corner }) };
  });
  const [card, thread, edges] = [
    marks.slice(0, CARD_MARKS),
    marks.slice(CARD_MARKS, FIRST_EDGE),
    marks.slice(FIRST_EDGE),
  ];
  return (
    <Sight
      {...header}
      title={say('photo.scrap-title')}
      picture={picture}
      marks={marks}
      sorts={sorts}
      onMarks={(change) => setMarks((now) => grown(change(now), picture))}
      lines={
        <>
          <Line kind="edge" marks={card} closed={isSet(card)} />
          <Line kind="thread" marks={thread} arrow={isSet(thread)} />
          <Line kind="outline" marks={edges} closed />
        </>
      }
      told={<ScrapTold verdict={verdict} />}
      mind={mind()}
      acts={
        <SightActs
          onOther={onOther}
          use={say('photo.use-outline')}
          onUse={verdict.is === 'seen' ? () => onUse(verdict.outline) : null}
        >
          <button
            type="button"
            class="quiet"
            {...unless(
              marks.every(({ miss }) => miss === null),
              () => setMarks((now) => oneBack(now, picture)),
            )}
          >
            {say('photo.one-back')}
          </button>
        </SightActs>
      }
    />
  );

  /** How far off the outline may be, or how it is marked well. */
  function mind(): string {
    if (verdict.is !== 'seen') return say('photo.finely');
    const give = roundedUp(verdict.outline.give, hand);
    return say(isCoarse(marks) ? 'photo.scrap-give-coarse' : 'photo.scrap-give', { give });
  }
}

const isSet = (marks: Marks): boolean => marks.every(({ miss }) => miss !== null);
