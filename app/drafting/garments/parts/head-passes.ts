import type { MeasureId, Mm } from '../../../body';
import type { Look } from '../../rows/names';
import type { Passage } from '../../rows/rows';
import { bandOpening } from '../../sizes/band';
import { finishedChest } from '../../sizes/dart';
import type { Sizes } from '../../sizes/maker';
import { drawnGirth } from '../../sizes/trunk';
import type { BodiceNames } from './bodice-names';
import type { Top, TopChoices } from './top';

type Asked<C extends object> = {
  readonly opened: (sizes: Sizes<'frontLength' | 'frontNeckDrop'>) => Mm;
  /** With a skirt sewn to its waist: that opens to its hem as well. */
  readonly openThrough?: (sizes: Sizes) => boolean;
  /** Opened behind it may be stepped into: what has to pass then. */
  readonly steppedInto?: MeasureId;
  readonly finishedNeck: (look: Look<BodiceNames<C>>) => Mm;
};

/** A head on its way through a bodice. What opens from the neck through its own hem is laid round: nothing of it stays closed. */
export function headPasses<C extends TopChoices>(
  { waisted, neckBanded }: Top<C>,
  { opened, openThrough, steppedInto, finishedNeck }: Asked<C>,
): readonly Passage<BodiceNames<C>>[] {
  const whole = waisted ? (openThrough ?? (() => false)) : true;
  const head = { measure: 'head-girth', opened, whole, ...(steppedInto ? { steppedInto } : {}) } as const;
  return [
    {
      ...head,
      through: 'hem',
      gives: (sizes) => drawnGirth(sizes, 'hem'),
      drawn: ({ sizes }) => drawnGirth(sizes, 'hem'),
      when: () => !waisted,
    },
    { ...head, through: 'chest', gives: finishedChest, drawn: ({ sizes }) => finishedChest(sizes) },
    {
      ...head,
      through: 'neck',
      gives: ({ neck }, { choices, cloth }) => neck * (neckBanded?.(choices) ? bandOpening(cloth) : 1),
      drawn: (look) => finishedNeck(look) * (neckBanded?.(look.choices) ? bandOpening(look.wearer.cloth) : 1),
      slit: true,
      seamed: true,
    },
  ];
}
