import { breaksIn } from './break';

/** Geometry, blocks, seams, matching, notches, the order of sewing. */
const drafts = 'properties/drafts';

export const draftingBreaks = breaksIn('app/drafting', [
  {
    what: 'arcs with the wrong handle',
    from: '(4 / 3) * Math.tan(',
    to: '(5 / 3) * Math.tan(',
    tests: 'reference/geometry',
  },
  {
    what: 'a quarter circle handle off',
    from: '(4 / 3) * (Math.SQRT2 - 1)',
    to: '(3 / 2) * (Math.SQRT2 - 1)',
    tests: 'reference/geometry-length',
  },
  {
    what: 'lengths of lines a thousandth long',
    from: 'distance(curve.from, curve.to) * end',
    to: 'distance(curve.from, curve.to) * end * 1.001',
    tests: 'reference/geometry-length',
  },
  {
    what: 'Brent that gives up at its bracket',
    from: 'if (Math.abs(fb) <= tolerance) return',
    to: 'if (Math.abs(fb) <= 40 * tolerance + 0.3) return',
    tests: 'properties/geometry-solve',
  },
  {
    what: 'a side not as long as its partner',
    from: 'Math.max(sideLevel - armholeDepth, 1) + sideGather',
    to: 'Math.max(sideLevel - armholeDepth, 1) * (1 + tummyHalf / 4000) + sideGather',
    tests: drafts,
  },
  {
    what: 'a cap not square to its underarm',
    from: 'const leave = point(taper.y, taper.x);',
    to: 'const leave = point(1, -0.3);',
    tests: drafts,
  },
  {
    what: 'an armhole not square to its shoulder',
    from: 'const down = point(-Math.sin(slope), Math.cos(slope));',
    to: 'const down = point(0.2, 1);',
    tests: drafts,
  },
  {
    what: 'the matcher takes what is not solved',
    from: 'if (!solved.ok) continue;',
    to: 'if (solved.ok) continue;',
    tests: drafts,
  },
  {
    what: 'a ring sector that turns too far',
    from: 'const angle = (low - wide) / height;',
    to: 'const angle = (1.1 * (low - wide)) / height;',
    tests: 'reference/fullness',
  },
  {
    what: 'a neckline that forgets to close round the neck',
    from: 'closed(half) - girth',
    to: 'closed(half) - 0.8 * girth',
    tests: drafts,
  },
  {
    what: 'notches counted from the wrong end',
    from: 'span.ref.back ? length - walked : walked',
    to: 'walked',
    tests: drafts,
  },
  {
    what: 'swapped edges: the hood sewn on by its face edge',
    from: "{ piece: 'hood', edge: 'neck-front', back: true }",
    to: "{ piece: 'hood', edge: 'face', back: true }",
    tests: drafts,
  },
  {
    what: 'hems turned before the seams that end there',
    from: 'if (late.finishes) return late.chains.some(',
    to: 'if (late.finishes) return !late.chains.some(',
    tests: 'unit/sewing',
  },
  {
    what: 'a tube closed before what is sewn along its end',
    from: 'crosses(early, late) || closes(late, early)',
    to: 'crosses(early, late) || closes(early, late)',
    tests: 'unit/sewing',
  },
  {
    what: 'a cap that eases in more than its cloth can',
    from: '1 + wearer.cloth.easesIn + EASED_EXACT',
    to: '1.2 + wearer.cloth.easesIn + EASED_EXACT',
    tests: drafts,
  },
  {
    what: 'an underarm that turns tighter than it could be clipped',
    from: 'export const LEAST_RADIUS_MM = 10;',
    to: 'export const LEAST_RADIUS_MM = 3;',
    tests: 'reference/practice-firsts',
  },
  {
    what: 'thin sleeves set in all the same',
    from: 'const NARROWEST_SET_IN_MM = 30;',
    to: 'const NARROWEST_SET_IN_MM = 3;',
    tests: 'reference/practice-firsts',
  },
  {
    what: 'pants too short between the legs',
    from: 'const longest = Math.max(crotch,',
    to: 'const longest = Math.max(0.9 * crotch,',
    tests: 'reference/practice-firsts',
  },
]);
