import { expect, test } from 'vitest';
import { draft, fullOrder } from '../../app/drafting/draft';
import { bodyFrom, demoCards } from '../../app/measuring';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

/** The order of sewing for every upright demo toy, a list of seam names each. */
function orders(garment: string, choices: Record<string, string | boolean>): string[][] {
  return demoCards
    .filter((card) => card.toy.body === 'upright')
    .map((card) => {
      const full = fullOrder({ garment, choices }, card.taken);
      if (!full.ok) throw new RangeError(full.fault.where);
      const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
      if (!outcome.ok) throw new RangeError(outcome.flags.map((flag) => flag.code).join());
      return outcome.draft.sewing.flatMap((step) => step.seams);
    });
}

/** What is sewn before what, wherever both are sewn: how the trade goes about it (common practice, no source). */
const practice: [string, string, Record<string, string | boolean>, string[]][] = [
  [
    'how far straps lap is tried on: they hang from the apron before their ends are turned',
    'apron',
    {},
    ['apron-neck-strap', 'apron-neck-strap-end', 'apron-waist-strap', 'apron-waist-strap-end'],
  ],
  [
    'so are straps that close behind the neck, once the dress can be put on',
    'dress',
    { bodice: 'halter' },
    ['strap-front', 'waist', 'strap-end'],
  ],
  [
    'a pocket goes on while the front lies flat, its hand edges hemmed first',
    'hooded-top',
    {},
    ['pocket-hand', 'pocket', 'shoulder'],
  ],
  [
    'a raglan sleeve is set in before side and underarm',
    'tee',
    { armhole: 'raglan', sleeve: 'long' },
    ['front-raglan', 'back-raglan', 'side', 'underarm'],
  ],
  [
    'so it is with a pocket on the front',
    'hooded-top',
    { armhole: 'raglan', pocket: true, sleeve: 'long' },
    ['pocket-hand', 'pocket', 'front-raglan', 'side', 'underarm'],
  ],
  [
    'a sleeve is set in flat',
    'tee',
    { armhole: 'set-in', sleeve: 'long' },
    ['shoulder', 'armhole', 'side', 'underarm'],
  ],
  ['a short sleeve is hemmed while it lies flat', 'tee', { sleeve: 'short' }, ['cuff', 'underarm']],
  [
    'a rib on sleeves cut in one goes over the top of the arm, which is sewn, and is closed at the underarm',
    'tee',
    { armhole: 'in-one', sleeve: 'long', wrist: 'rib' },
    ['over-arm', 'cuff-rib-edge', 'underarm', 'cuff-rib-inside'],
  ],
  ['a collar is made up before it is sewn on', 'tee', { neck: 'flat' }, ['collar-round', 'collar-end', 'collar-neck']],
  ['a standing collar is closed inside last', 'tee', { neck: 'band' }, ['collar-end', 'collar-neck', 'collar-inside']],
  [
    'a facing is made up before it is sewn on',
    'tee',
    { neck: 'faced', armhole: 'set-in' },
    ['facing-shoulder', 'facing-neck'],
  ],
  [
    'armholes are bound flat, their ends closed with the sides',
    'tank',
    {},
    ['armhole-binding-edge', 'side', 'armhole-binding-end'],
  ],
  [
    'armholes are bound flat under a hood too',
    'hooded-top',
    { sleeve: 'none' },
    ['armhole-binding-edge', 'side', 'armhole-binding-end'],
  ],
  ['cuffs are bound flat', 'tee', { sleeve: 'puffed', armhole: 'set-in' }, ['cuff-band', 'underarm', 'cuff-band-end']],
  [
    'a closure is folded back before the neck is bound over it',
    'tee',
    { opening: 'back', neck: 'bound' },
    ['back-closure', 'binding-edge'],
  ],
  [
    'a hood is made up and its face hemmed before it is sewn on',
    'hooded-top',
    {},
    ['hood-crown', 'hood-face', 'hood-neck-front'],
  ],
  [
    'an opening is folded back over the end of the hood',
    'hooded-top',
    { opening: 'front', chin: 'meet' },
    ['hood-neck-front', 'front-closure'],
  ],
  ['and over that of the hem, turned before it', 'jacket', {}, ['hem', 'front-closure']],
  ['but a rib is sewn over its fold', 'jacket', { hem: 'rib' }, ['front-closure', 'hem-rib-edge']],
  ['the fronts of a cape are hemmed before its neck is bound', 'cape', {}, ['cape-front', 'binding-edge']],
  ['and before its hood is sewn on', 'cape', { hood: 'auto' }, ['cape-front', 'hood-face', 'hood-neck-front']],
  ['a hem is turned before pleats are laid', 'skirt', { skirt: 'knife' }, ['skirt-side', 'skirt-hem', 'waist']],
  [
    'straps are stitched on a bound top',
    'dress',
    { bodice: 'band' },
    ['top-binding-edge', 'top-binding-inside', 'strap-front'],
  ],
  [
    'or caught in the seam of its lining',
    'dress',
    { bodice: 'band', lining: true },
    ['strap-long', 'strap-front', 'lining-top'],
  ],
  [
    'a slit is faced before the neck is bound',
    'tee',
    { opening: 'slit' },
    ['slit', 'slit-top', 'binding-edge', 'binding-inside'],
  ],
  ['a hem is turned all round, after the sides', 'tee', {}, ['side', 'hem']],
  ['wrist warmers are hemmed flat', 'wrist-warmers', {}, ['wrist-warmer-bottom', 'wrist-warmer-side']],
  ['a sock is hemmed flat', 'socks', { heel: 'tube' }, ['sock-top', 'sock-round']],
  ['one of two sides too', 'socks', {}, ['sock-front', 'sock-top', 'sock-round']],
  [
    'a sock is ribbed flat, closed with its rib',
    'socks',
    { heel: 'tube', hem: 'rib' },
    ['sock-rib-edge', 'sock-round', 'sock-rib-inside'],
  ],
  [
    'and one of two sides, closed in front',
    'socks',
    { hem: 'rib' },
    ['sock-front', 'sock-rib-edge', 'sock-round', 'sock-rib-inside'],
  ],
  ['the gap of a bag is closed last', 'bib', {}, ['bib-round', 'bib-end', 'bib-gap']],
  ['and that of a lining', 'tank', { neck: 'lined', opening: 'none' }, ['lining-hem', 'lining-gap']],
  [
    'faced in one, it is turned while its shoulders are open, and those of the facing are closed last',
    'tank',
    { neck: 'in-one', opening: 'back' },
    ['facing-front-armhole', 'facing-back-armhole', 'shoulder', 'side', 'facing-shoulder'],
  ],
  [
    'lined and closed before and behind, it is turned while its shoulders are open, and they are closed after the gap',
    'tank',
    { neck: 'lined', opening: 'none' },
    ['lining-front-armhole', 'lining-back-neck', 'side', 'lining-hem', 'lining-gap', 'shoulder', 'lining-shoulder'],
  ],
  [
    'a slit is cut once the neck above it is lined',
    'tank',
    { neck: 'lined', opening: 'slit' },
    ['lining-back-neck', 'lining-slit', 'side'],
  ],
  [
    'an opening is lined with the neck, before the hem is turned',
    'tank',
    { neck: 'lined', opening: 'back', hem: 'casing' },
    ['lining-neck', 'lining-back', 'lining-armhole', 'side', 'hem', 'lining-hem'],
  ],
  ['or faced', 'tee', { neck: 'faced', opening: 'slit' }, ['facing-neck', 'slit', 'side']],
  [
    'tiers are rings before they are gathered',
    'skirt',
    { skirt: 'tiers' },
    ['skirt-side', 'tier-2-side', 'tier-2', 'tier-hem'],
  ],
  ['a skirt is sewn up before it is hung', 'dress', {}, ['skirt-side', 'waist']],
  ['a bodice is sewn up before a skirt hangs from it', 'dress', {}, ['side', 'waist', 'skirt-hem']],
  [
    'a sleeveless lining is sewn in flat, before the sides',
    'tank',
    { neck: 'lined', opening: 'back' },
    ['shoulder', 'lining-neck', 'lining-armhole', 'side', 'lining-side', 'lining-hem'],
  ],
  [
    'a lining is stitched down over the waist last',
    'dress',
    { bodice: 'band', lining: true },
    ['side', 'lining-top', 'waist', 'lining-hem'],
  ],
  ['a waistband is stitched down inside last', 'skirt', {}, ['waist', 'waistband-inside']],
];

test.each(practice)('%s', (_, garment, choices, inOrder) => {
  for (const order of orders(garment, choices)) {
    const sewn = inOrder.filter((seam) => order.includes(seam));
    expect(order.filter((seam) => sewn.includes(seam))).toEqual(sewn);
  }
});

test('a long sleeve is hemmed while it lies flat where its cuff is under 160 mm round, after its seam where it is wider', () => {
  const seen = ['tiny', 'rabbit', 'bear', 'huge'].map((name) => {
    const build = builds.find((each) => each.name === name) ?? expect.fail(`no build ${name}`);
    const drafted = made(buildCard(build), 'tee', { choices: { sleeve: 'long' } }) ?? expect.fail('refused');
    const order = drafted.sewing.flatMap(({ seams }) => seams);
    const cuff = drafted.fit.find(({ place }) => place === 'cuff')?.garment ?? Number.NaN;
    return [cuff < 160, order.indexOf('cuff') < order.indexOf('underarm')];
  });
  expect(seen).toEqual([
    [true, true],
    [true, true],
    [false, false],
    [false, false],
  ]);
});
