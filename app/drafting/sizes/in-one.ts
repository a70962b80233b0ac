import type { Flag, Mm, Traits } from '../../body';
import { inOne } from '../curves/in-one';
import { sideSeam } from '../curves/side';
import { point, startTangent } from '../geometry';
import { LEAST_SIDE_MM } from './bodice';
import { maker, type Sizes } from './maker';
import { drawnTrunk } from './trunk';

/** How far below level a sleeve points, radians: less than the arm, for every degree more takes as much from its width (common practice, no source). */
const POINTS: Readonly<Record<Traits['arms'], number>> = {
  up: 0,
  out: (3 * Math.PI) / 180,
  forward: (8 * Math.PI) / 180,
  down: (12 * Math.PI) / 180,
};
/** Under the arm it turns on a radius of this share of the sleeve's girth: any tighter than the least and it could not be turned or clipped (common practice, no source). */
const RADIUS_SHARE = 0.08;
export const LEAST_RADIUS_MM = 10;
const MOST_RADIUS_MM = 40;
/** The depth is found by going on by what is missing, so often at most, until so little is, mm. */
const STEPS = 30;
const FOUND_MM = 1e-3;

/**
 * Sleeves cut in one with a top: front and back alike but for their necks, so that both sleeves are. The underarm lies as low as the
 * sleeve's width asks, and the sleeve is never so short that it could not be hemmed.
 */
export const inOneSizes = maker(
  [
    'slope',
    'shoulder',
    'neckHalfWidth',
    'armDrop',
    'chest',
    'tummy',
    'hem',
    'fullest',
    'armholeDepth',
    'sideLevel',
    'frontLength',
    'backLength',
    'bicep',
    'cuff',
    'sleeveLength',
  ],
  [
    'chest',
    'chestShare',
    'tummyShare',
    'hemShare',
    'armholeDepth',
    'sideLevel',
    'frontLength',
    'backLength',
    'bicep',
    'armTurn',
    'armReach',
    'cuffHalf',
    'armRadius',
    'armLower',
    'dartMost',
  ],
  (wearer, sizes) => {
    const side = wearer.hem + LEAST_SIDE_MM;
    const armTurn = POINTS[wearer.traits.arms];
    const radius = Math.min(Math.max(sizes.bicep * RADIUS_SHARE, LEAST_RADIUS_MM), MOST_RADIUS_MM);
    const arm = { armTurn, cuffHalf: sizes.cuff / 2, armRadius: radius };
    let [depth, reach] = [sizes.armholeDepth, sizes.sleeveLength];
    let drawn = sleeveAt(sizes, arm, depth, reach);
    for (let step = 0; step < STEPS; step++) {
      const [narrow, short] = [(sizes.bicep - drawn.bicep) / 2, side - drawn.straight];
      if (narrow < FOUND_MM && short < FOUND_MM) break;
      depth += Math.max(narrow, 0);
      reach += Math.max(short, 0);
      drawn = sleeveAt(sizes, arm, depth, reach);
    }
    const longer = Math.max(depth + side - sizes.sideLevel, 0);
    const later = Math.max(reach - sizes.sleeveLength, 0);
    return {
      sizes: {
        ...HALVES,
        ...arm,
        chest: chestAt(sizes, depth),
        armReach: reach,
        armholeDepth: depth,
        sideLevel: sizes.sideLevel + longer,
        frontLength: sizes.frontLength + longer,
        backLength: sizes.backLength + longer,
        bicep: drawn.bicep,
        armLower: depth - sizes.armholeDepth,
      },
      stops: lengthsApart(sizes, sizes.sideLevel),
      adjustments: [
        ...news('armhole-deepened', depth - sizes.armholeDepth, ['armhole-depth', 'upper-arm-girth']),
        ...news('body-lengthened', longer, ['body-length', 'armhole-depth']),
        ...news('sleeve-lengthened', later, ['arm-length', 'chest-girth']),
      ],
    };
  },
);

/** Front and back alike; an underarm so low leaves no room for darts at the chest. */
const HALVES = { chestShare: 0.5, tummyShare: 0.5, hemShare: 0.5, dartMost: 0, underarmDeeper: 0 } as const;

type Bodied = Sizes<
  | 'slope'
  | 'shoulder'
  | 'neckHalfWidth'
  | 'armDrop'
  | 'chest'
  | 'tummy'
  | 'hem'
  | 'fullest'
  | 'sideLevel'
  | 'armholeDepth'
>;

/** The sleeve as it is drawn for an underarm at this depth. */
function sleeveAt(sizes: Bodied, arm: Sizes<'armTurn' | 'cuffHalf' | 'armRadius'>, armholeDepth: Mm, armReach: Mm) {
  const sideLevel = Math.max(sizes.sideLevel, armholeDepth + LEAST_SIDE_MM);
  const level = { ...sizes, armholeDepth, sideLevel, chest: chestAt(sizes, armholeDepth) };
  const { front } = drawnTrunk({ ...level, ...HALVES });
  const underarm = point(front.chest, sizes.armDrop + armholeDepth);
  const side = sideSeam(underarm, { ...level, tummyHalf: front.tummy, hemHalf: front.hem, sideGather: 0 });
  return inOne({ ...level, ...arm, armReach, chestHalf: front.chest }, startTangent(side));
}

/** Round the body at an underarm so deep: the lower it lies, the nearer to where the tummy is fullest. */
function chestAt({ chest, tummy, fullest, sideLevel, armholeDepth }: Bodied, depth: Mm): Mm {
  const share = (depth - armholeDepth) / Math.max(fullest * (sideLevel - armholeDepth), 1);
  return chest + Math.max(tummy - chest, 0) * Math.min(share, 1);
}

/** A hem that dips by more than a quarter of its own girth below its sides cannot be drawn. */
function lengthsApart({ frontLength, backLength, armDrop, hem }: Lengths, sideLevel: Mm): Flag[] {
  const by = Math.max(frontLength, backLength) - armDrop - sideLevel;
  return by > hem / 4
    ? [
        {
          code: 'lengths-apart',
          severity: 'impossible',
          measures: ['body-length', 'back-body-length', 'side-length'],
          values: { by },
        },
      ]
    : [];
}

type Lengths = Sizes<'frontLength' | 'backLength' | 'armDrop' | 'hem'>;

/** Changes under half a millimetre are no news. */
function news(
  code: string,
  by: Mm,
  check: readonly ('armhole-depth' | 'upper-arm-girth' | 'body-length' | 'arm-length' | 'chest-girth')[],
) {
  return by > 0.5 ? [{ code, by, because: 'in-one', check }] : [];
}
