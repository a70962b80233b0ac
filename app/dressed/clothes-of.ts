import type { Body, Mm } from '../body';
import type { Draft, Piece } from '../drafting/draft-types';
import type { Band, Clothes, Coat, Hat, Hood, Opening, Pocket, Skirt, Top, Tunic } from './clothes';
import { hungOf } from './hung-of';
import { legsOf, sleeveOf, sockOf, wristOf } from './limbs-of';
import { type Read, reader } from './reader';

/** What a draft looks like from outside, read off its pieces and its fit: whatever pieces of these names it has. */
export function clothesOf(draft: Draft, body: Body): Clothes {
  const read = reader(draft, body);
  const front = read.piece('front') ?? read.piece('dress-front');
  const banded = Boolean(front) && isBanded(draft);
  return {
    top: front && !banded ? topOf(front, read) : vestOf(read),
    band: front && banded ? bandOf(front, read) : null,
    sleeve: sleeveOf(read),
    hood: hoodOf(read),
    hat: hatOf(read),
    skirt: skirtOf(read),
    legs: legsOf(read),
    hung: hungOf(read),
    wrist: wristOf(read),
    coat: coatOf(read),
    sock: sockOf(read),
    tunic: tunicOf(read),
  };
}

function tunicOf({ piece, choice }: Read): Tunic | null {
  const drawn = piece('drawn-front') !== undefined;
  return drawn || piece('tunic-front') ? { winged: choice('wings') !== 'none', drawn } : null;
}

/** A bodice on straps is drawn from its upper edge down: it has no shoulder, and its neckline runs out to its side. */
const isBanded = (draft: Draft): boolean => draft.pieces.some(({ name }) => name === 'strap' || name === 'top-binding');

function topOf(front: Piece, { piece, edge, choice, fit, ofBody, long }: Read): Top {
  const back = piece('back') ?? piece('dress-back');
  const shoulder = edge('front', 'shoulder');
  return {
    neck: fit('neck'),
    frontDrop: highest(front),
    backDrop: back ? highest(back) : 0,
    shoulder: shoulder ? Math.min(ofBody(shoulder.length, 'shoulder-length'), 1.1) : piece('sleeve') ? null : 0.2,
    levels: levelsOf(front, back),
    opening: openingOf(front, back, choice),
    collar: piece('collar') ? 'flat' : long('collar-band', 'top') > 0 ? 'band' : null,
    skirted: piece('skirt-front') !== undefined || piece('leg') !== undefined,
    drawnIn: front.name === 'dress-front',
    pocket: pocketOf(front),
    rib: long('hem-rib', 'side') / 2,
  };
}

/** A vest cut in one piece and worn open. */
function vestOf({ piece, long, fit }: Read): Top | null {
  if (!piece('vest')) return null;
  const high = long('vest', 'centre');
  const girth = 2 * long('vest', 'bottom');
  return {
    neck: Math.max(fit('neck'), 1.1),
    frontDrop: 0.3 * high,
    backDrop: 4,
    shoulder: 0.85,
    levels: [
      { down: 0.42 * high, girth },
      { down: high, girth },
    ],
    opening: { side: 'front', long: 'all', zip: false },
    collar: null,
    skirted: true,
    drawnIn: false,
    pocket: null,
    rib: 0,
  };
}

/** Where the centre begins, below the high shoulder point. */
const highest = (piece: Piece): Mm => {
  const centre = piece.edges.find(({ name }) => name === 'centre');
  const ends = centre?.path.flatMap(({ from, to }) => [from.y, to.y]) ?? [0];
  return Math.min(...ends);
};

/** Girths where the sides begin and end, and between. */
function levelsOf(front: Piece, back: Piece | undefined) {
  const sides = [front, back ?? front].map((piece) => {
    const path = piece.edges.find(({ name }) => name === 'side')?.path ?? [];
    return [...path.map(({ from }) => from), ...path.slice(-1).map(({ to }) => to)];
  });
  const [ahead = [], behind = []] = sides;
  return ahead.map(({ x, y }, index) => {
    const other = behind[Math.round((index * (behind.length - 1)) / Math.max(ahead.length - 1, 1))];
    return { down: y, girth: 2 * (x + (other?.x ?? x)) };
  });
}

function openingOf(front: Piece, back: Piece | undefined, choice: Read['choice']): Opening | null {
  const chosen = choice('opening');
  if (chosen === 'front' || chosen === 'back') return { side: chosen, long: 'all', zip: choice('closedBy') === 'zip' };
  for (const [side, piece] of [['front', front] as const, ['back', back] as const]) {
    const slit = piece?.lines.find(({ name }) => name === 'slit');
    if (slit) return { side, long: slit.length, zip: false };
  }
  return null;
}

function pocketOf(front: Piece): Pocket | null {
  const corners = front.lines
    .filter(({ name }) => name.startsWith('pocket-') && name !== 'pocket-centre')
    .flatMap(({ path }) => path.map(({ from }) => from));
  const side = front.edges.find(({ name }) => name === 'side')?.path[0]?.from.x ?? 1;
  if (corners.length < 3) return null;
  const inner = front.lines.find(({ name }) => name === 'pocket-centre')?.path[0]?.from;
  if (corners.length === 3) return inner ? { corners: [...corners, inner], half: side, patch: true } : null;
  const [top, hand, edge, bottom] = corners;
  return top && hand && edge && bottom ? { corners: [top, hand, edge, bottom], half: side, patch: false } : null;
}

function bandOf(front: Piece, { piece, edge, choice, long }: Read): Band {
  const upper = edge('front', 'neckline')?.path[0]?.from ?? { x: 0, y: 0 };
  const peak = edge('front', 'armhole')?.path[0]?.from.x ?? 0;
  const back = piece('back') ? long('back', 'hem') : long('front', 'hem');
  return {
    high: long('front', 'side') || front.edges.find(({ name }) => name === 'centre')?.length || 0,
    dip: upper.y,
    peak,
    round: !edge('front', 'side'),
    straps: peak > 0 ? 'neck' : piece('strap') ? String(choice('straps')) : 'none',
    strapWide: long('strap', 'top'),
    girth: 2 * (long('front', 'hem') + back),
  };
}

function hoodOf({ piece, choice, fit }: Read): Hood | null {
  if (!piece('hood')) return null;
  return {
    face: fit('face'),
    strip: piece('strip') !== undefined,
    earsOut: choice('ears') === 'open',
    meets: choice('chin') === 'meet' && !piece('face-rib'),
    rib: piece('face-rib') !== undefined,
  };
}

function coatOf({ piece, long, choice }: Read): Coat | null {
  const flat = piece('coat') !== undefined;
  if (!flat && !piece('coat-back')) return null;
  return {
    flat,
    tab: long('coat', 'side'),
    sleeve: long('leg-sleeve', 'side'),
    collar: piece('collar-band') !== undefined,
    opens: flat ? null : choice('closes') === 'back' ? 'back' : 'belly',
  };
}

const FALLS: Readonly<Record<string, Skirt['falls']>> = {
  gathered: 'gathers',
  elastic: 'gathers',
  tiers: 'gathers',
  knife: 'pleats',
  box: 'pleats',
};

function hatOf({ piece, long, choice }: Read): Hat | null {
  if (piece('bonnet-front')) return { cuff: false, brim: 0, earsOut: choice('hatEars') === 'open', strap: true };
  if (!piece('gore') && !piece('gore-front')) return null;
  const inner = long('brim', 'top');
  const brim = inner > 0 ? long('brim', 'side') / (2 * inner) : 0;
  return { cuff: piece('cuff') !== undefined, brim, earsOut: piece('gore-before') !== undefined, strap: false };
}

function skirtOf({ piece, choice, long }: Read): Skirt | null {
  if (!piece('skirt-front')) return null;
  const [front, back] = ['skirt-front', piece('skirt-back') ? 'skirt-back' : 'skirt-front'];
  const round = (of: string): Mm => 2 * (long(front, of) + long(back, of));
  const falls = FALLS[String(choice('skirt'))] ?? 'flare';
  const first = { down: long(front, 'centre'), girth: round('bottom') };
  const more = [2, 3, 4, 5].flatMap((tier) => (piece(`tier-${tier}`) ? [`tier-${tier}`] : []));
  const tiers = more.map((name, index) => ({
    down: first.down + more.slice(0, index + 1).reduce((sum, each) => sum + long(each, 'side'), 0),
    girth: 2 * (piece(name)?.copies ?? 1) * long(name, 'bottom'),
  }));
  const last = tiers.at(-1) ?? first;
  const sewn = piece('waistband') ? 2 * long('waistband', 'top') : 0;
  const waist = sewn || (piece('front') ? 4 * long('front', 'hem') : round('top'));
  return {
    long: last.down,
    top: waist,
    hem: last.girth,
    falls,
    tiers: [first, ...tiers],
    band: piece('waistband') ? long('waistband', 'side') / 2 : 0,
  };
}
