import type { MeasureId, Traits } from '../../../body';
import type { Point } from '../../../body/point';

/** A head by itself, for every kind that has one: half widths, height, and where its chin is from either side. */
export type HeadForm = {
  readonly half: number;
  readonly halfDepth: number;
  readonly height: number;
  /** Seen from the front or the back; and from the side, where the face looks right. */
  readonly chin: Point;
  readonly sideChin: Point;
  readonly ears: Traits['ears'];
  /** Size of the ears, how far apart and how far behind the face they sit: 1 on the typical toy. */
  readonly earSize: number;
  readonly earInset: number;
  readonly earBehind: number;
  /** How much longer than a bear's the muzzle is. */
  readonly snout: number;
};

type By = (...ids: readonly MeasureId[]) => number;

/** The typical head, stretched by what is known of it. */
export function headForm(
  traits: Traits,
  by: By,
  typical: Pick<HeadForm, 'chin' | 'sideChin' | 'snout'> & { size: number },
): HeadForm {
  const { size, ...rest } = typical;
  return {
    ...rest,
    half: 56 * size * by('head-girth'),
    halfDepth: 50 * size * by('head-girth', 'hood-depth'),
    height: 92 * size * by('face-edge', 'crown-arc', 'over-head'),
    ears: traits.ears,
    earSize: size * by('ear-base', 'ear-girth'),
    earInset: by('ear-inset'),
    earBehind: by('ear-from-face-edge'),
  };
}
