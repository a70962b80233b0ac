import type { MeasureId, Mm } from '../../../body';
import type { Hems } from '../../heads/choices';
import type { Look } from '../../rows/names';
import type { FitPlace } from '../../rows/rows';
import { RIB_SHARE } from '../../sizes/band';
import { finishedChest } from '../../sizes/dart';
import { askedHem, drawnGirth, type SideSize, type TrunkSize } from '../../sizes/trunk';

type Names = { readonly choices: object; readonly size: TrunkSize | SideSize; readonly edge: never };

/** A band of rib at the hem is stretched to it. */
const ribbed = (choices: Partial<Hems>): boolean => choices.hem === 'rib';
const TWO_SIDE_SEAMS = 2;
/** What sizes differ by from rounding, mm. */
const ROUNDED_MM = 0.01;
const eased =
  (measure: MeasureId) =>
  ({ wearer }: Pick<Look, 'wearer'>): Mm =>
    wearer.girth(measure, TWO_SIDE_SEAMS);

/** A trunk's girths as they are drawn, beside the body's; `swings`: the hem is let down, and wider on purpose. */
export function trunkFit(hasHem: () => boolean, swings: true | undefined): readonly FitPlace<Names>[] {
  return [
    {
      place: 'chest',
      measure: 'chest-girth',
      garment: ({ sizes }) => finishedChest(sizes),
      asked: eased('chest-girth'),
      because: ({ sizes }) => {
        if ('armLower' in sizes) return 'in-one';
        return drawnGirth(sizes, 'chest') > sizes.chest + ROUNDED_MM ? 'lean' : 'chest';
      },
    },
    {
      place: 'tummy',
      measure: 'body-girth',
      garment: ({ sizes }) => drawnGirth(sizes, 'tummy'),
      asked: eased('body-girth'),
      because: () => (swings ? 'swing' : 'lean'),
      when: hasHem,
    },
    {
      place: 'hem',
      measure: 'hem-girth',
      garment: ({ sizes, choices }) => drawnGirth(sizes, 'hem') * (ribbed(choices) ? RIB_SHARE : 1),
      why: ({ choices }) => (ribbed(choices) ? 'band-stretches' : null),
      asked: ({ wearer }) => askedHem(wearer),
      because: () => (swings ? 'swing' : 'lean'),
      when: hasHem,
    },
  ];
}
