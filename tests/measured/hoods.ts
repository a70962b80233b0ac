import type { Card } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { pathLength, pointAtLength } from '../../app/drafting/geometry';
import { along, edgeNamed, lengthNamed, made, pieceNamed, reading } from './made';
import type { Rows } from './rows';

/** Hoods, over everything: with a strip between, its half lies behind the side's own depth. */
export function hoods(card: Card): Rows {
  return [
    ...hoodRows('top', card, made(card, 'hooded-top')),
    ...hoodRows('top, three parts', card, made(card, 'hooded-top', { choices: { hood: 'three' } })),
    ...hoodRows('top, ears open', card, made(card, 'hooded-top', { choices: { ears: 'open' } })),
    ...hoodRows('cape', card, made(card, 'cape', { choices: { hood: 'auto' } })),
  ];
}

export function hoodRows(place: string, card: Card, draft: Draft | null): Rows {
  if (!draft) return [[`${place}: parts`, null]];
  const strip = pieceNamed(draft, 'strip');
  const faceEdge = 2 * lengthNamed(draft, 'hood', 'face') + 2 * lengthNamed(draft, 'strip', 'face');
  return [
    [`${place}: parts`, strip ? 3 : 2],
    [`${place}: depth wanted`, reading(card, 'hood-depth')],
    [`${place}: depth over everything`, depth(draft)],
    [`${place}: crown arc wanted`, reading(card, 'crown-arc')],
    [
      `${place}: crown arc`,
      strip ? lengthNamed(draft, 'strip', 'centre') : crown(draft).reduce((sum, edge) => sum + edge.length, 0),
    ],
    [`${place}: face edge wanted`, reading(card, 'face-edge')],
    [`${place}: face edge`, faceEdge],
    [`${place}: gap under the chin`, chinGap(draft)],
    [`${place}: strip over head girth`, (2 * lengthNamed(draft, 'strip', 'face')) / reading(card, 'head-girth')],
    [`${place}: neck pleated by`, draft.seams.find((seam) => seam.name === 'hood-neck-back')?.ratio],
    [`${place}: nape before the deepest, of the side's depth`, beak(draft)],
    [`${place}: opens`, String(draft.order.choices.opening ?? '')],
  ];
}

function crown(draft: Draft) {
  const names = ['crown', 'crown-front', 'ear', 'crown-back', 'opening'];
  return names.flatMap((name) => edgeNamed(draft, 'hood', name) ?? []);
}

/** How far up the face edge the head is deepest (drafting: at ear height). */
const LEVEL = 0.52;

/** Level from the face edge to the back of the head, half the strip included where the crown is that far along. */
export function depth(draft: Draft): number {
  const face = edgeNamed(draft, 'hood', 'face')?.path ?? [];
  const { point: from } = pointAtLength(face, pathLength(face) * LEVEL);
  const path = crown(draft).flatMap((edge) => edge.path);
  const places = along(path).map(({ point }) => point);
  const below = places.findIndex((place, at) => place.y >= from.y && at > 0);
  const share = below / Math.max(places.length - 1, 1);
  const side = ['side', 'side-front', 'ear', 'side-back'].flatMap(
    (name) => edgeNamed(draft, 'strip', name)?.path ?? [],
  );
  const half = side.length > 0 ? pointAtLength(side, pathLength(side) * share).point.x : 0;
  return (places[below]?.x ?? 0) - from.x + half;
}

/** How far the nape lies before the deepest place of the back, as a share of the side's depth. */
function beak(draft: Draft): number {
  const xs = along(crown(draft).flatMap((edge) => edge.path)).map(({ point }) => point.x);
  const deepest = Math.max(...xs);
  return (deepest - (xs[xs.length - 1] ?? 0)) / deepest;
}

/** What of the neckline in front nothing is sewn to, both halves. */
function chinGap(draft: Draft): number {
  const sewn = draft.seams.flatMap((seam) => [...seam.first, ...seam.second]).map((ref) => `${ref.piece}.${ref.edge}`);
  const free = ['front', 'cape'].flatMap((name) =>
    (pieceNamed(draft, name)?.edges ?? []).filter(
      (edge) =>
        /gap|chin/.test(edge.name) ||
        (/neck/.test(edge.name) && edge.name !== 'neck-end' && !sewn.includes(`${name}.${edge.name}`)),
    ),
  );
  return 2 * free.reduce((sum, edge) => sum + edge.length, 0);
}
