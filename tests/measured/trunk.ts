import type { Card, MeasureId } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { cloths } from '../../app/drafting/garments';
import { along, edgeNamed, lengthNamed, made, reading } from './made';
import type { Rows } from './rows';

/** Ease asked by an easy fit: 6 %, at least 6 mm, and what two side seams of the cloth take. */
const EASY = 0.06;
const LEAST_MM = 6;

const governed: readonly (readonly [string, MeasureId])[] = [
  ['chest', 'chest-girth'],
  ['tummy', 'body-girth'],
  ['hem', 'hem-girth'],
];

/** Finished girths over what the fit asked for, in percent; how far sides lean; whether it was said. */
export function widths(card: Card): Rows {
  return ['tee', 'tank', 'hooded-top', 'dress', 'nightshirt'].flatMap((garment): Rows => {
    const draft = made(card, garment);
    if (!draft) return [[`${garment}: chest over the fit, %`, null]];
    return [
      ...governed.flatMap(([place, id]): Rows => {
        const row = draft.fit.find((each) => each.place === place);
        return row ? [[`${garment}: ${place} over the fit, %`, 100 * (row.garment / asked(card, id, draft) - 1)]] : [];
      }),
      [`${garment}: side of the front leans, °`, lean(draft, 'front')],
      [`${garment}: side of the back leans, °`, lean(draft, 'back')],
      [`${garment}: steepest place of the back's side, °`, steepest(draft, 'back')],
    ];
  });
}

/** A hem is hardly narrower than the tummy it has to pass. */
const HEM_OF_TUMMY = 0.97;

export function asked(card: Card, id: MeasureId, draft: Draft): number {
  const girth = eased(card, id, draft);
  return id === 'hem-girth' ? Math.max(girth, HEM_OF_TUMMY * eased(card, 'body-girth', draft)) : girth;
}

function eased(card: Card, id: MeasureId, draft: Draft): number {
  const thickness = cloths.find((cloth) => cloth.id === draft.order.cloth)?.thickness ?? 0;
  const girth = reading(card, id);
  return girth + Math.max(girth * EASY, LEAST_MM) + (Math.PI + 4) * thickness;
}

/** Outwards downwards is positive. */
export function lean(draft: Draft, piece: string): number | null {
  const path = edgeNamed(draft, piece, 'side')?.path;
  const [from, to] = [path?.[0]?.from, path?.[path.length - 1]?.to];
  return from && to ? (Math.atan2(to.x - from.x, to.y - from.y) * 180) / Math.PI : null;
}

function steepest(draft: Draft, piece: string): number | null {
  const path = edgeNamed(draft, piece, 'side')?.path;
  if (!path) return null;
  const leans = along(path).map(({ tangent }) => (Math.atan2(tangent.x, tangent.y) * 180) / Math.PI);
  return leans.reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most), 0);
}

/** Sleeves by where the arms point, on the same readings. */
export function sleeves(card: Card): Rows {
  return (['down', 'forward', 'out', 'up'] as const).flatMap((arms): Rows => {
    const draft = made({ ...card, toy: { ...card.toy, traits: { ...card.toy.traits, arms } } }, 'hooded-top');
    const seam = draft?.seams.find((each) => each.name === 'armhole');
    if (!draft || !seam) return [[`arms ${arms}: cap over armhole`, draft ? 'raglan' : null]];
    const caps = [
      ...(edgeNamed(draft, 'sleeve', 'front-cap')?.path ?? []),
      ...(edgeNamed(draft, 'sleeve', 'back-cap')?.path ?? []),
    ];
    const heights = along(caps).map(({ point }) => point.y);
    return [
      [`arms ${arms}: cap over armhole`, seam.secondLength / seam.firstLength],
      [`arms ${arms}: cap height`, Math.max(...heights) - Math.min(...heights)],
      [`arms ${arms}: armhole`, seam.firstLength],
      [`arms ${arms}: front of the cap, %`, (100 * lengthNamed(draft, 'sleeve', 'front-cap')) / seam.secondLength],
      [`arms ${arms}: bicep`, draft.fit.find((row) => row.place === 'bicep')?.garment],
      [
        `arms ${arms}: back armhole over front`,
        lengthNamed(draft, 'back', 'armhole') / lengthNamed(draft, 'front', 'armhole'),
      ],
    ];
  });
}
