import type { Mm } from '../../../body';
import type { bodice } from '../../blocks/bodice';
import type { raglanSleeve } from '../../blocks/raglan';
import type { Role } from '../../draft-types';
import { type Hems, isOpen, type Opens, type Sleeves } from '../../heads/choices';
import type { RefTo } from '../../rows/names';
import type { EdgesOf } from '../../rows/piece-row';
import type { Wearer } from '../../sizes/wearer';

/** Front and back of a bodice, and what a raglan sleeve has of the neckline. */
export type Sides = EdgesOf<'front' | 'back', ReturnType<typeof bodice>>;
export type NeckEdge =
  | Extract<Sides, 'front.chin' | 'front.neckline' | 'front.neck-end' | 'back.neckline' | 'back.neck-end'>
  | Extract<EdgesOf<'sleeve', typeof raglanSleeve>, 'sleeve.neck-front' | 'sleeve.neck-back'>;
export type NeckRef = RefTo<NeckEdge>;

/** How the arm comes to it: `bare` without a sleeve, `in-one` where the sleeve is cut in one with it. */
export type Arm = 'bare' | 'set-in' | 'raglan' | 'in-one';

/** What the parts of a top are told of their garment. */
export type Top<C extends object> = {
  readonly arm: (choices: C) => Arm;
  readonly lined: (choices: C) => boolean;
  /** At an opening the neck is bound to the very edge. */
  readonly neckEndBound: (choices: C) => boolean;
  /** A standing band closes its neck: of knit it is shorter than its edge. */
  readonly neckBanded?: (choices: C) => boolean;
  /** What opens it meets edge to edge under a zip, and does not lap. */
  readonly zipped?: (choices: C) => boolean;
  /** Its front edges are those of an old button band: nothing is folded back, nothing sewn on. */
  readonly banded?: (choices: C) => boolean;
  /** What the end of a sleeve is, where that is not as the hem. */
  readonly cuff?: (choices: C) => Role;
  /** Neck and armholes are faced in one piece: its shoulders are sewn after that. */
  readonly facedInOne?: (choices: C) => boolean;
  /** A skirt is sewn to its waist: it has no hem of its own. */
  readonly waisted: boolean;
  /** Where a slit lies that lets the head in. */
  readonly slit: Side;
  /** What is stitched on the front, if anything is. */
  readonly pocket?: (choices: C, wearer: Wearer) => PocketPlace | null;
};
export type Side = 'front' | 'back';

/** How wide a patch on either side is to be, or else how long a pocket's hand edge; how far it stays from the hem and, where the front opens, from the centre line, mm. */
export type PocketPlace = { readonly hand: Mm; readonly from: Mm; readonly beside: Mm; readonly patch?: Mm };

/** What every top lets its maker choose. */
export type TopChoices = Opens & Hems;

export const armOf = ({ sleeve, armhole }: Sleeves): Arm => {
  if (sleeve === 'none') return 'bare';
  return armhole === 'raglan' || armhole === 'in-one' ? armhole : 'set-in';
};

/** Half the neckline from centre front to centre back, as a collar or hood meets it. */
export const halfNeckline =
  <C extends object>({ arm }: Pick<Top<C>, 'arm'>) =>
  (choices: C): NeckRef[] => [...frontNeckline({ arm })(choices), { piece: 'back', edge: 'neckline', back: true }];

/** What of it lies before the shoulder, a raglan sleeve's share with it. */
export const frontNeckline =
  <C extends object>({ arm }: Pick<Top<C>, 'arm'>) =>
  (choices: C): NeckRef[] => [
    { piece: 'front', edge: 'neckline' },
    ...(arm(choices) === 'raglan'
      ? [{ piece: 'sleeve', edge: 'neck-front' } as const, { piece: 'sleeve', edge: 'neck-back' } as const]
      : []),
  ];

/** The same to the very edge of an opening: where a binding ends. */
export const wholeHalfNeckline =
  <C extends Opens>(top: Pick<Top<C>, 'arm'>) =>
  (choices: C): NeckRef[] => [
    ...(choices.opening === 'front' ? [{ piece: 'front', edge: 'neck-end' } as const] : []),
    ...halfNeckline(top)(choices),
    ...(choices.opening === 'back' ? [{ piece: 'back', edge: 'neck-end', back: true } as const] : []),
  ];

/** A side that opens and laps: it has ends of neck and hem beyond its centre. */
export const lappedOf =
  <C extends Opens>({ zipped }: Pick<Top<C>, 'zipped'>) =>
  (side: Side) =>
  (choices: C): boolean =>
    isOpen(side)(choices) && !zipped?.(choices);
