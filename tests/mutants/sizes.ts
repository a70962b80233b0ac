import { breaksIn } from './break';

/** Finished sizes, openings, fullness, allowances. */
const byHand = 'reference/sizes-by-hand';

export const sizeBreaks = breaksIn('app/drafting', [
  {
    what: 'ease taken off instead of put on',
    from: 'return girth + Math.max(girth * share, least)',
    to: 'return girth - Math.max(girth * share, least)',
    tests: byHand,
  },
  { what: 'an easy fit that is close', from: 'easy: 0.06', to: 'easy: 0.05', tests: byHand },
  { what: 'thick cloth counted once too little', from: '(Math.PI + 2 * seams)', to: '(2 + 2 * seams)', tests: byHand },
  { what: 'limbs as snug as bodies', from: 'LEAST_LIMB_EASE_MM = 10', to: 'LEAST_LIMB_EASE_MM = 6', tests: byHand },
  { what: 'a neck without ease', from: 'girth + Math.max(girth * 0.03, 4)', to: 'girth + 0 * 4', tests: byHand },
  { what: 'an armhole without ease', from: 'DEPTH_EASE_SHARE = 0.06', to: 'DEPTH_EASE_SHARE = 0.01', tests: byHand },
  {
    what: 'a soft head that must be firm',
    from: 'const SOFT_PASS = 0.9;',
    to: 'const SOFT_PASS = 0.8;',
    tests: byHand,
  },
  { what: 'a firm head without room', from: 'FIRM_ROOM_MM = 5', to: 'FIRM_ROOM_MM = 0', tests: byHand },
  { what: 'a slit whose end is the tightest place', from: 'SLIT_ROOM_MM = 10', to: 'SLIT_ROOM_MM = 0', tests: byHand },
  { what: 'a slit down to the hem', from: 'LONGEST_SLIT = 0.6', to: 'LONGEST_SLIT = 0.9', tests: byHand },
  { what: 'a slit that is wished for, too short', from: 'WISHED_SLIT = 0.3', to: 'WISHED_SLIT = 0.2', tests: byHand },
  { what: 'a slit counted once', from: 'gives + 2 * slit', to: 'gives + slit', tests: byHand },
  {
    what: 'a seamed edge that stretches in full',
    from: '(passage.seamed ? 0.5 : 1)',
    to: '(passage.seamed ? 1 : 0.5)',
    tests: byHand,
  },
  { what: 'thick cloth gathered as full as thin', from: 'upToMm: 0.4', to: 'upToMm: 0.8', tests: byHand },
  { what: 'gathers too few', from: 'thin: 2,', to: 'thin: 1.8,', tests: byHand },
  { what: 'pleats that do not meet', from: '(2 * finished) / pleats', to: '(1.8 * finished) / pleats', tests: byHand },
  { what: 'tiers less full', from: 'TIER_GATHERS = 1.5', to: 'TIER_GATHERS = 1.4', tests: byHand },
  {
    what: 'a circle that is none',
    from: 'top + 2 * Math.PI * length',
    to: 'top + 1.9 * Math.PI * length',
    tests: byHand,
  },
  {
    what: 'a half circle that is whole',
    from: 'return top + Math.PI * length',
    to: 'return top + 2 * Math.PI * length',
    tests: byHand,
  },
  {
    what: 'hips that do not pass the opening',
    from: "Math.max(wearer.of('hip-girth') - waist, 0) / 2 + 10",
    to: "Math.max(wearer.of('hip-girth') - waist, 0) / 4 + 10",
    tests: byHand,
  },
  { what: 'a strip too wide at the nape', from: 'NAPE_SHARE = 0.6', to: 'NAPE_SHARE = 0.7', tests: byHand },
  {
    what: 'a hood’s face with the strip counted in',
    from: 'Math.max((hoodFace - strip) / 2 + neckLower,',
    to: 'Math.max(hoodFace / 2 + neckLower,',
    tests: byHand,
  },
  { what: 'a cape that hangs flat', from: 'const FULLNESS = 2.4', to: 'const FULLNESS = 2.2', tests: byHand },
  {
    what: 'a dog’s cape that ends above its sides',
    from: 'const TO_BELLY = 1 / 4 + 1 / (2 * Math.PI)',
    to: 'const TO_BELLY = 1 / 4',
    tests: 'reference/practice-coat',
  },
  { what: 'a scarf too narrow', from: 'SCARF_WIDTH = 0.11', to: 'SCARF_WIDTH = 0.09', tests: byHand },
  { what: 'a nightshirt without swing', from: 'const SWING = 1.12', to: 'const SWING = 1.05', tests: byHand },
  {
    what: 'a closure too narrow to fold',
    from: 'small: 10, usual: 20, large: 25',
    to: 'small: 10, usual: 12, large: 25',
    tests: byHand,
  },
  {
    what: 'round hems turned as far as straight ones',
    from: 'MOST_CURVED_HEM_MM = 6',
    to: 'MOST_CURVED_HEM_MM = 12',
    tests: byHand,
  },
  {
    what: 'corrections learnt from trying on, forgotten',
    from: '(corrections[name as SizeId] ?? 0)',
    to: '0 * (corrections[name as SizeId] ?? 0)',
    tests: byHand,
  },
]);
