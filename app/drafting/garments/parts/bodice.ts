import type { MeasureId, Mm } from '../../../body';
import { bodice, type Cut } from '../../blocks/bodice';
import type { Role } from '../../draft-types';
import { type Hems, isOpen } from '../../heads/choices';
import { type Look, sumOf } from '../../rows/names';
import { type Part, part } from '../../rows/part';
import { piece } from '../../rows/piece-row';
import { bandShare } from '../../sizes/band';
import { bodiceSizes, fullestSizes } from '../../sizes/bodice';
import { elasticFor, zipAlong } from '../../sizes/fastening';
import { keptSideSizes } from '../../sizes/kept-side';
import type { Sizes } from '../../sizes/maker';
import { neckSizes } from '../../sizes/neck';
import type { Wearer } from '../../sizes/wearer';
import { bagged, shouldersLast, turnGap } from './bag';
import { bodiceFeed, sleeveFeed } from './bodice-feed';
import { type BodiceGives, type BodiceNames, underarmSizes } from './bodice-names';
import { darted, dartSeams } from './dart';
import { headPasses } from './head-passes';
import { hemRole, isReady } from './hem';
import { FACED_FLAT } from './in-one-facing';
import { LINED_FLAT } from './lining';
import { scrapNeck } from './thick';
import { type Arm, halfNeckline, lappedOf, type Side, type Top, type TopChoices } from './top';
import { trunkFit } from './trunk-fit';

export type { BodiceGives } from './bodice-names';

type Takes<C extends object, S extends string = never> = {
  readonly choices: C;
  readonly size: S;
  readonly edge: never;
};
/** What other parts of the garment ask of its bodice, by their own sizes. */
type Asked<C extends object, S extends string> = {
  /** How much farther down an opening goes than the bodice. */
  readonly below?: (sizes: Sizes<S>) => Mm;
  /** And whether that is to the very hem. */
  readonly throughout?: (sizes: Sizes<S>) => boolean;
  /** Its hem is let down and swings. */
  readonly swings?: true;
  /** Put on feet first through its open back: no head has to pass. */
  readonly steppedInto?: true;
  /** Where its open back lets no head in, this may go in first. */
  readonly orBy?: MeasureId;
  /** Half of what a hood leaves free of the front neckline; 0: nothing. */
  readonly chin?: (sizes: Sizes<S>, choices: C) => Mm | null;
};

function row<C extends TopChoices, S extends string>(
  top: Top<C>,
  { chin }: Asked<C, S>,
  side: Side,
  cut: Cut,
  open: boolean,
) {
  const { waisted, lined, pocket } = top;
  const cuffRole = top.cuff ?? hemRole;
  const centreRole = (choices: C): Role => {
    if (!open) return 'fold';
    if (lined(choices)) return 'seam';
    return top.banded?.(choices) ? 'finished' : 'closure';
  };
  const isBagged = bagged(top);
  const place = side === 'front' ? pocket : undefined;
  const placed = (look: Look<BodiceNames<C>>) => place?.(look.choices, look.wearer) ?? null;
  return piece<BodiceNames<C>>()(side, bodice(cut), {
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    sizes: {
      ...bodiceFeed(top, side, open),
      ...(cut === 'in-one' ? sleeveFeed : {}),
      chinGap: side === 'front' ? (look) => freeUnder(chin, look) : null,
      turnGap: turnGap(top, side),
      pocketHand: (look) => placed(look)?.hand ?? null,
      pocketFrom: (look) => placed(look)?.from ?? null,
      pocketPatch: (look) => placed(look)?.patch ?? null,
      pocketBeside: open ? (look) => placed(look)?.beside ?? null : null,
    },
    roles: (choices) => ({
      chin: 'neckline',
      neckline: 'seam',
      shoulder: 'seam',
      armhole: 'seam',
      cuff: cuffRole(choices),
      underarm: 'seam',
      side: 'seam',
      hem: waisted || isBagged(choices) ? 'seam' : hemRole(choices),
      'neck-end': lined(choices) ? 'seam' : 'neckline',
      gap: 'seam',
      'hem-end': waisted ? 'opening' : isBagged(choices) ? 'seam' : hemRole(choices),
      centre: centreRole(choices),
    }),
    cuts: ['slit'],
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) => isOpen(side)(choices) === open && cutFor(top.arm(choices)) === cut,
  });
}

const cutFor = (arm: Arm): Cut => (arm === 'bare' ? 'set-in' : arm);

function freeUnder<C extends object, S extends string>(
  chin: Asked<C, S>['chin'],
  { sizes, choices }: { readonly sizes: object; readonly choices: C },
): Mm | null {
  return chin?.(sizes as Sizes<S>, choices) || null;
}

/** Front and back hanging from the shoulders. Something is sewn to every neckline and armhole. */
export function bodicePart<C extends TopChoices, S extends string = never>(
  top: Top<C>,
  asked: Asked<C, S> = {},
): Part<Takes<C, S>, BodiceGives> {
  const { arm, lined, waisted, neckEndBound, neckBanded, zipped } = top;
  const { below, throughout, chin, swings, steppedInto, orBy } = asked;
  /** With front or back open all the way, everything opens from the neck to the hem, and what opens below it. */
  const opened = (sizes: Sizes<'frontLength' | 'frontNeckDrop'>) =>
    2 * (sizes.frontLength - sizes.frontNeckDrop + (below?.(sizes as unknown as Sizes<S>) ?? 0));
  const banded = ({ choices, wearer }: Pick<Look<BodiceNames<C>>, 'choices' | 'wearer'>) =>
    neckBanded?.(choices) ? bandShare(wearer.cloth) : 1;
  const closedAlong = ({ choices, wearer, length }: Look<BodiceNames<C>>, side: Side): Mm =>
    zipped?.(choices) ? zipIn(length(`${side}.centre`), choices, wearer) : length(`${side}.centre`);
  const hasHem = () => !waisted;
  const isBagged = bagged(top);
  const lapped = lappedOf(top);
  const neckline = halfNeckline(top);
  /** What is sewn while the shoulders are open. */
  const flat = (choices: C): readonly string[] => {
    if (top.facedInOne?.(choices)) return FACED_FLAT;
    return shouldersLast(top)(choices) ? LINED_FLAT : [];
  };
  const finishedNeck = (look: Look<BodiceNames<C>>) =>
    2 * (sumOf(neckline(look.choices), look) + (freeUnder(chin, look) ? look.length('front.chin') : 0));
  const rows = part<Takes<C>, BodiceGives>({
    sizes: [neckSizes, underarmSizes(top), bodiceSizes, keptSideSizes, ...(waisted ? [] : [fullestSizes])],
    centre: [{ length: ({ frontLength, frontNeckDrop }) => frontLength - frontNeckDrop }],
    passages: steppedInto
      ? []
      : headPasses(top, {
          opened,
          finishedNeck,
          ...(orBy ? { steppedInto: orBy } : {}),
          openThrough: (sizes) => throughout?.(sizes as unknown as Sizes<S>) ?? false,
        }),
    pieces: (['front', 'back'] as const).flatMap((side) =>
      (['set-in', 'raglan', 'in-one'] as const).flatMap((cut) => [
        row(top, asked, side, cut, false),
        row(top, asked, side, cut, true),
      ]),
    ),
    seams: [
      ...dartSeams<Side>(
        (side) => side,
        (side) => side,
      ),
      {
        name: 'shoulder',
        sewn: 2,
        first: [{ piece: 'back', edge: 'shoulder' }],
        second: [{ piece: 'front', edge: 'shoulder' }],
        after: (choices) => [...flat(choices), ...(shouldersLast(top)(choices) ? ['lining-gap'] : [])],
        when: (choices) => arm(choices) === 'set-in' || arm(choices) === 'bare',
      },
      ...[false, true].map((runsOn) => ({
        name: 'side',
        sewn: 2 as const,
        first: [{ piece: 'back' as const, edge: 'side' as const }],
        second: [{ piece: 'front' as const, edge: 'side' as const }],
        longer: 'gathered' as const,
        after: flat,
        ...(runsOn ? { from: 'underarm' } : {}),
        when: (choices: C) => (arm(choices) === 'in-one') === runsOn,
      })),
      {
        name: 'hem',
        sewn: 2,
        kind: 'folded',
        first: (choices) => [
          ...(lapped('front')(choices) ? [{ piece: 'front', edge: 'hem-end', back: true } as const] : []),
          { piece: 'front', edge: 'hem', back: true },
          { piece: 'back', edge: 'hem' },
          ...(lapped('back')(choices) ? [{ piece: 'back', edge: 'hem-end' } as const] : []),
        ],
        second: [],
        // What opens is lined to its end first, while the sides are open.
        after: (choices) => (lined(choices) ? ['lining-neck'] : []),
        when: (choices) => !waisted && !isBagged(choices) && choices.hem !== 'rib' && !isReady(choices),
      },
      ...(['front', 'back'] as const).flatMap((side) => [
        {
          name: `${side}-closure`,
          sewn: 2 as const,
          kind: 'folded' as const,
          // Folded over the end of a collar or hood; a strip is bound over it.
          first: (choices: C) => [
            { piece: side, edge: 'centre' } as const,
            ...(neckEndBound(choices) || zipped?.(choices) ? [] : [{ piece: side, edge: 'neck-end' } as const]),
          ],
          second: [],
          // Turned first, the hem lies within the fold and its end is covered. A zip runs to just beside what is sewn on above, too.
          after: (choices: C) => ['hem', ...(zipped?.(choices) ? ['chin'] : [])],
          when: (choices: C) => isOpen(side)(choices) && !lined(choices) && !top.banded?.(choices),
        },
        {
          name: `${side}-waist-end`,
          sewn: 2 as const,
          kind: 'folded' as const,
          first: [{ piece: side, edge: 'hem-end' } as const],
          second: [],
          when: (choices: C) => waisted && isOpen(side)(choices) && !lined(choices),
        },
      ]),
    ],
    notes: [scrapNeck, ...darted],
    fit: [
      {
        place: 'neck',
        measure: 'neck-girth',
        garment: (look) => finishedNeck(look) * banded(look),
        why: (look) => (banded(look) < 1 ? 'band-stretches' : null),
      },
      ...trunkFit(hasHem, swings),
    ],
    notions: [
      ...(['front', 'back'] as const).map((side) => ({
        kind: 'closure' as const,
        place: `${side}-closure`,
        length: (look: Look<BodiceNames<C>>) => closedAlong(look, side),
        when: isOpen(side),
      })),
      {
        kind: 'elastic',
        place: 'hem',
        length: ({ wearer }) => elasticFor(wearer.of('hem-girth')),
        when: (choices) => !waisted && choices.hem === 'casing',
      },
    ],
  });
  return rows as unknown as Part<Takes<C, S>, BodiceGives>;
}

/** A zip ends below what is sewn to the neck, and above a rib at the hem. */
export const zipIn = (opening: Mm, { hem }: Hems, { scale }: Pick<Wearer, 'scale'>): Mm =>
  zipAlong(opening, hem === 'rib' ? 2 : 1, scale);
