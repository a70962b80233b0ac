import type { Card } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { garments } from '../../app/drafting/garments';
import { looseEdges } from '../holds/loose';
import { type Chosen, edgeNamed, lengthNamed, made, pieceNamed, reading } from './made';
import type { Rows } from './rows';

/** Straps against the way measured: from top edge to top edge, without what is stitched down at each end. */
export function straps(card: Card): Rows {
  return (['band', 'dipped', 'half-circle', 'halter'] as const).flatMap((bodice) =>
    (['straight', 'crossed', 'neck'] as const).flatMap((kind): Rows => {
      const draft = made(card, 'dress', { choices: { bodice, straps: kind } });
      const long = draft && lengthNamed(draft, 'strap', 'side');
      return long
        ? [
            [`${bodice}, ${kind}: strap`, long],
            [`${bodice}, ${kind}: over the way measured`, long - reading(card, 'strap-length')],
            [`${bodice}, ${kind}: width`, lengthNamed(draft, 'strap', 'top')],
          ]
        : [[`${bodice}, ${kind}: strap`, null]];
    }),
  );
}

/** The gap things are turned through, and the least it should be: 50 mm or a quarter of the seam. */
export function turning(card: Card): Rows {
  const bagged: readonly (readonly [string, Draft | null, string])[] = [
    ['lined tank', made(card, 'tank', { choices: { neck: 'lined', opening: 'none' } }), 'lining-hem'],
    ['lined tank, open behind', made(card, 'tank', { choices: { neck: 'lined', opening: 'back' } }), 'lining-hem'],
    ['bib', made(card, 'bib'), 'bib-round'],
  ];
  return bagged.flatMap(([name, draft, seam]): Rows => {
    if (!draft) return [[`${name}: gap`, null]];
    const gap = draft.seams.find((each) => each.name.endsWith('-gap'));
    const round = draft.seams.find((each) => each.name === seam);
    return [
      [`${name}: gap`, gap ? gap.firstLength * gap.sewn : 0],
      [`${name}: gap wanted`, round && Math.max(50, (round.firstLength * round.sewn) / 4)],
      [`${name}: shoulder`, lengthNamed(draft, 'front', 'shoulder')],
    ];
  });
}

/** Fixed sizes, which should follow the toy. */
export function fixedSizes(card: Card): Rows {
  const tee = made(card, 'tee', { choices: { opening: 'back' } });
  const skirt = (kind: string) => made(card, 'skirt', { choices: { skirt: kind } });
  const [gathered, knife, box, elastic] = ['gathered', 'knife', 'box', 'elastic'].map(skirt);
  const allowance = (draft: Draft | null | undefined, piece: string, edge: string) =>
    draft && edgeNamed(draft, piece, edge)?.allowance;
  const top = made(card, 'hooded-top', { choices: { opening: 'front' } });
  const scarf = made(card, 'scarf');
  return [
    ['chest', reading(card, 'chest-girth')],
    ['seam', allowance(tee, 'front', 'side')],
    ['hem', allowance(tee, 'front', 'hem')],
    ['overlap past the centre', tee && lengthNamed(tee, 'back', 'neck-end')],
    ['fold-back', allowance(tee, 'back', 'centre')],
    ['waistband, cut', gathered && lengthNamed(gathered, 'waistband', 'side')],
    ['casing', allowance(elastic, 'skirt-front', 'top')],
    ['pleat, knife', pleat(knife)],
    ['pleat, box', pleat(box)],
    ['waist / 20', reading(card, 'waist-girth') / 20],
    ['scarf, width', scarf && 2 * lengthNamed(scarf, 'scarf', 'top')],
    ['half pocket, top', top && (lengthNamed(top, 'pocket', 'top') || 'left out')],
  ];
}

/** The narrowest distance between two pleat folds. */
function pleat(draft: Draft | null | undefined): number | null {
  const lines = draft && pieceNamed(draft, 'skirt-front')?.lines;
  const places = (lines ?? []).map((line) => line.path[0]?.from.x ?? 0).sort((a, b) => a - b);
  const apart = places
    .slice(1)
    .map((x, n) => x - (places[n] ?? x))
    .filter((each) => each > 0.5);
  return apart.length > 0 ? Math.min(...apart) : null;
}

/** Edges that nothing is sewn to and nothing finishes, by garment and choice of opening. */
export function rawEnds(card: Card): Rows {
  return garments
    .filter((garment) => garment.bodies.includes('upright'))
    .flatMap((garment) =>
      (garment.choices.opening ? (['none', 'slit', 'back', 'front'] as const) : ([undefined] as const)).map(
        (opening) => {
          const draft = made(card, garment.id, opening ? { choices: { opening } } : {});
          return [
            `${garment.id}${opening ? `, ${opening}` : ''}`,
            draft && (looseEdges(draft).join(' ') || 'none'),
          ] as const;
        },
      ),
    );
}

const wanted: readonly (readonly [garment: string, choices: Chosen, first: string, then: string])[] = [
  ['hooded-top', {}, 'hood-face', 'hood-neck-front'],
  ['hooded-top', { opening: 'front' }, 'front-closure', 'chin'],
  ['hooded-top', { opening: 'front', chin: 'meet' }, 'hood-neck-front', 'front-closure'],
  ['cape', {}, 'cape-front', 'binding-edge'],
  ['cape', { hood: 'auto' }, 'cape-front', 'hood-neck-front'],
  ['cape', { hood: 'auto' }, 'hood-face', 'hood-neck-front'],
  ['skirt', { skirt: 'knife' }, 'skirt-hem', 'waist'],
  ['dress', { bodice: 'band' }, 'top-binding-edge', 'strap-front'],
  ['dress', { bodice: 'band', lining: true }, 'strap-front', 'lining-top'],
];

/** Whether steps come in the order that can be sewn. */
export function stepOrder(card: Card): Rows {
  return wanted.map(([garment, choices, first, then]) => {
    const steps = made(card, garment, { choices })?.sewing.flatMap((step) => step.seams) ?? [];
    const [one, two] = [steps.indexOf(first), steps.indexOf(then)];
    const told = one < 0 || two < 0 ? null : `${one < two ? 'yes' : 'NO'} (${one + 1}, ${two + 1})`;
    return [`${garment} ${JSON.stringify(choices)}: ${first} before ${then}`, told];
  });
}

/** What is listed besides pieces, openings that do not count on what is guessed, and what can be asked for. */
export function listed(card: Card): Rows {
  return garments
    .filter((garment) => garment.bodies.includes('upright'))
    .map((garment) => {
      const draft:
        | (Draft & { readonly notions?: readonly { readonly kind: string; readonly length?: number }[] })
        | null = made(card, garment.id);
      return [
        `${garment.id}: notions`,
        draft &&
          ((draft.notions ?? []).map(({ kind, length }) => `${kind} ${length ?? ''}`.trim()).join(', ') || 'none'),
      ];
    });
}

/** A top whose head nobody measured: does it stay closed? */
export function guessedHead(card: Card): Rows {
  const { 'head-girth': _, ...readings } = card.readings;
  return ['hooded-top', 'tee', 'tank', 'nightshirt', 'dress'].map((garment) => [
    `${garment}, head not measured: opens`,
    String(made({ ...card, readings }, garment)?.order.choices.opening ?? 'refused'),
  ]);
}
