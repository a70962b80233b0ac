import type { Legs, Sleeve, Sock, Wrist } from './clothes';
import type { Read } from './reader';

/** What lies on the arms and legs, read off a draft. */
export function sleeveOf({ piece, choice, long, ofBody }: Read): Sleeve | null {
  const rib = long('cuff-rib', 'side') / 2;
  const ends = { rib: ofBody(rib, 'underarm-length'), elastic: choice('wrist') === 'elastic' };
  if (long('front', 'underarm') > 0)
    return {
      reach: ofBody(long('front', 'underarm') + rib, 'underarm-length'),
      upper: ofBody(2 * long('front', 'cuff'), 'upper-arm-girth'),
      cuff: ofBody(2 * long('front', 'cuff'), 'upper-arm-girth'),
      puffed: false,
      raglan: false,
      ...ends,
    };
  if (!piece('sleeve')) return null;
  const under = long('sleeve', 'front-underarm') + long('cuff-band', 'side') / 2 + rib;
  const cuff = piece('cuff-band') ? 2 * long('cuff-band', 'top') : long('sleeve', 'cuff');
  const widest = Math.max(cuff, ...(piece('sleeve')?.cutLine.map(({ from }) => 2 * Math.abs(from.x)) ?? []));
  return {
    reach: ofBody(under, 'underarm-length'),
    upper: ofBody(choice('sleeve') === 'puffed' ? widest : long('sleeve', 'cuff'), 'upper-arm-girth'),
    cuff: ofBody(cuff, 'upper-arm-girth'),
    puffed: choice('sleeve') === 'puffed',
    raglan: choice('armhole') === 'raglan',
    ...ends,
  };
}

export function legsOf({ piece, long, ofBody, choice }: Read): Legs | null {
  if (piece('pants') ?? piece('pants-tube')) return { reach: 0, girth: 1, band: 0, bib: null };
  if (!piece('leg')) return null;
  const inside = long('leg', 'front-inseam') + long('leg', 'front-gusset');
  return {
    reach: inside > 0 ? ofBody(inside, 'inside-leg-length') : 1,
    girth: ofBody(long('leg', 'hem'), 'thigh-girth'),
    band: piece('waistband') ? long('waistband', 'side') / 2 : 0,
    bib: piece('bib-front')
      ? {
          half: long('bib-front', 'top'),
          high: long('bib-front', 'side'),
          strapWide: long('strap', 'top'),
          crossed: choice('straps') === 'crossed',
        }
      : null,
  };
}

export function wristOf({ piece, long, ofBody }: Read): Wrist | null {
  if (!piece('wrist-warmer')) return null;
  return {
    long: long('wrist-warmer', 'side'),
    girth: ofBody(2 * long('wrist-warmer', 'top'), 'paw-girth'),
  };
}

export function sockOf({ piece, choice }: Read): Sock | null {
  if (!piece('sock')) return null;
  return { high: choice('sock') === 'high', rib: piece('sock-rib') !== undefined };
}
