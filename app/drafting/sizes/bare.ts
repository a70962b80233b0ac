import type { Mm } from '../../body';
import { LEAST_LIMB_EASE_MM } from './ease';
import { maker } from './maker';
import { BINDING_MM } from './scale';
import { LEAST_INSET_MM } from './shoulder';
import { narrowestChest } from './trunk';
import type { Wearer } from './wearer';

const ONE_SEAM = 1;
/** A shoulder finished on both sides is hardly ever narrower: two strips, and this between them (common practice, no source). */
const BETWEEN_STRIPS_MM = 2;
export const leastBareShoulder = ({ scale }: Pick<Wearer, 'scale'>): Mm => 2 * BINDING_MM[scale] + BETWEEN_STRIPS_MM;

/**
 * A bodice without sleeves: its shoulder is as wide as two finished edges need, where the chest leaves room. Levels are counted
 * from the arm end, so that what lies below stays where it was. `armRoot` is what an armhole needs to go round the arm.
 */
export const bareSizes = maker(
  ['slope', 'shoulder', 'neckHalfWidth', 'chest', 'chestShare', 'armDrop', 'armholeDepth', 'sideLevel'],
  ['shoulder', 'inset', 'armDrop', 'armholeDepth', 'sideLevel', 'armRoot'],
  (wearer, sizes) => {
    const { slope, shoulder, neckHalfWidth, armDrop, armholeDepth, sideLevel } = sizes;
    const chestHalf = narrowestChest(sizes);
    const room = (chestHalf - neckHalfWidth - LEAST_INSET_MM) / Math.cos(slope);
    const wide = Math.max(Math.min(leastBareShoulder(wearer), room), shoulder);
    const down = (wide - shoulder) * Math.sin(slope);
    return {
      sizes: {
        shoulder: wide,
        inset: chestHalf - neckHalfWidth - wide * Math.cos(slope),
        armDrop: armDrop + down,
        armholeDepth: armholeDepth - down,
        sideLevel: sideLevel - down,
        armRoot: wearer.girth('arm-root-girth', ONE_SEAM, LEAST_LIMB_EASE_MM),
      },
    };
  },
);
