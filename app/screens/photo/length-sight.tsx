import { useMemo, useState } from 'preact/hooks';
import type { Known, MeasureId } from '../../body';
import { useWords } from '../../parts';
import type { Toy } from '../../storage';
import { Line } from '../shared/photo/line';
import { CARD_MARKS, isCoarse, type Sort, waitingMarks } from '../shared/photo/marks';
import { Sight } from '../shared/photo/sight';
import { SightActs } from '../shared/photo/sight-acts';
import { to } from '../shared/route';
import { ENDS_WAIT_AT, verdictOf } from './marks';
import { Told } from './told';

type LengthSightProps = {
  readonly picture: HTMLCanvasElement;
  readonly measure: MeasureId;
  readonly toy: Toy;
  readonly back: string;
  readonly onUse: (known: Known) => void;
  readonly onOther: () => void;
};

/** The photo with six marks on it: four corners of the card, and the two ends of what is measured. */
export function LengthSight({ picture, measure, toy, back, onUse, onOther }: LengthSightProps) {
  const { say } = useWords();
  const [marks, setMarks] = useState(() => waitingMarks(ENDS_WAIT_AT, picture));
  const verdict = useMemo(() => verdictOf(marks, picture), [marks, picture]);
  const sorts = marks.map(
    (_, at): Sort => ({
      group: at < CARD_MARKS ? 'corner' : 'end',
      tag: String(at + 1),
      name: say(`photo.mark-${at + 1}`),
    }),
  );
  const card = marks.slice(0, CARD_MARKS);
  return (
    <Sight
      title={say('photo.title')}
      back={back}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`measure.${measure}.name`)}
      picture={picture}
      marks={marks}
      sorts={sorts}
      onMarks={setMarks}
      lines={
        <>
          <Line kind="edge" marks={card} closed={card.every(({ miss }) => miss !== null)} />
          <Line kind="length" marks={marks.slice(CARD_MARKS)} />
        </>
      }
      told={<Told verdict={verdict} coarse={isCoarse(marks)} />}
      mind={say(verdict.is === 'seen' ? 'photo.bulge-short' : 'photo.finely')}
      acts={
        <SightActs
          onOther={onOther}
          use={say('photo.use')}
          onUse={verdict.is === 'seen' ? () => onUse(verdict.known) : null}
        />
      }
    />
  );
}
