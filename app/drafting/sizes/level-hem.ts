import type { Mm } from '../../body';
import { plumbDrop } from '../curves/side';
import { maker } from './maker';
import { asked } from './trunk';

/**
 * A bodice whose hem is laid on a finished one: straight and level, its sides going out equally far in front and behind, so that
 * they are one curve, and as far as the tummy asks. What front or back was longer is left out.
 */
export const levelHemSizes = maker(
  [
    'chest',
    'tummy',
    'hem',
    'chestShare',
    'tummyShare',
    'hemShare',
    'fullest',
    'armDrop',
    'armholeDepth',
    'sideLevel',
    'frontLength',
  ],
  ['hem', 'hemShare', 'frontLength', 'backLength', 'frontGather', 'backGather'],
  (_, sizes) => {
    const [before, behind] = [asked(sizes, 'front'), asked(sizes, 'back')];
    const across: Mm = Math.max(
      ...[before, behind].map(({ chest, tummy, hem }) => Math.max(hem - chest, (tummy - chest) / sizes.fullest)),
    );
    const half = before.chest + behind.chest + 2 * across;
    const level = sizes.armDrop + sizes.armholeDepth + plumbDrop(across, sizes.sideLevel - sizes.armholeDepth);
    const by = level - sizes.frontLength;
    return {
      sizes: {
        hem: 2 * half,
        hemShare: (before.chest + across) / half,
        frontLength: level,
        backLength: level,
        frontGather: 0,
        backGather: 0,
      },
      adjustments:
        by < -0.5
          ? [{ code: 'hem-levelled', by, because: 'finished-edge', check: ['body-length', 'side-length'] }]
          : [],
    };
  },
);
