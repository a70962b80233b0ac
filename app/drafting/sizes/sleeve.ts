import type { Mm } from '../../body';
import type { Sleeves } from '../heads/choices';
import { LEAST_SIDE_MM } from './bodice';
import { LEAST_LIMB_EASE_MM } from './ease';
import { maker } from './maker';
import type { Wearer } from './wearer';

const ONE_SEAM = 1;
/** A puffed sleeve is this much wider, and its cap rises by this share of the arm's girth more (common practice, no source). */
const PUFF = 1.5;
const PUFF_RISE = 0.12;
/** A sleeve's girth changes by at most this much for each mm of its length. */
const STEEPEST_TAPER = 0.9;
/** And its cuff, square to both underarm seams, bows by at most this share of their length. */
const MOST_BOW = 0.3;
/** Of the underarm, what a short sleeve covers (common practice, no source). */
const SHORT_SHARE = 0.3;
/** A cap rises at most this share of the arm's length. */
const HIGHEST_CAP = 0.45;
/** Where one of the two arm lengths was not taken: the usual share of the outer one that lies below the bicep line. */
const USUAL_UNDERARM = 0.76;

/** A sleeve the whole of which passes the paw; cap height is outer arm length less underarm length. */
export const sleeveSizes = maker(
  [],
  ['bicep', 'cuff', 'cuffBand', 'capHeight', 'sleeveLength', 'underarmLength', 'armhole'],
  (wearer: Wearer<Pick<Sleeves, 'sleeve'>>) => {
    const paw = wearer.girth('paw-girth', ONE_SEAM, LEAST_LIMB_EASE_MM);
    const passes = paw * (wearer.traits.stuffing === 'soft' ? wearer.softPass : 1);
    const [outer, under] = [wearer.taken('arm-length'), wearer.taken('underarm-length')];
    const armLength = outer || !under ? wearer.of('arm-length') : wearer.of('underarm-length') / USUAL_UNDERARM;
    const underarm = under || !outer ? wearer.of('underarm-length') : armLength * USUAL_UNDERARM;
    const least = wearer.hem + LEAST_SIDE_MM;
    const capHeight = Math.max(0, Math.min(armLength - underarm, armLength * HIGHEST_CAP, armLength - least));
    const long = Math.max(armLength - capHeight, least);
    const upperArm = Math.max(wearer.girth('upper-arm-girth', ONE_SEAM, LEAST_LIMB_EASE_MM), passes);
    const bicep = Math.max(upperArm, paw - mostTaper(long, paw));
    const wrist = Math.max(paw, bicep - mostTaper(long, bicep));
    const puffed = wearer.choices.sleeve === 'puffed';
    const short = puffed || wearer.choices.sleeve === 'short';
    const underarmLength = short ? Math.min(Math.max(long * SHORT_SHARE, least), long) : long;
    const along = bicep + ((wrist - bicep) * underarmLength) / long;
    const cuff = short ? sewnCuff(along, bicep, underarmLength) : wrist;
    return {
      sizes: {
        bicep: puffed ? bicep * PUFF : bicep,
        cuff: puffed ? bicep * PUFF : cuff,
        cuffBand: Math.max(cuff, passes) / 2,
        capHeight: capHeight + (puffed ? bicep * PUFF_RISE : 0),
        sleeveLength: capHeight + underarmLength + (puffed ? bicep * PUFF_RISE : 0),
        underarmLength,
        armhole: wearer.girth('arm-root-girth', ONE_SEAM, LEAST_LIMB_EASE_MM),
      },
      adjustments:
        armLength < underarm - 0.5
          ? [
              {
                code: 'cap-flat',
                by: armLength - underarm,
                because: 'arm-lengths',
                check: ['underarm-length', 'arm-length'],
              },
            ]
          : [],
    };
  },
);

/** The cuff nearest the wanted one that a tube of this bicep can narrow or widen to over so short an underarm, mm. */
export function sewnCuff(cuff: Mm, bicep: Mm, underarm: Mm): Mm {
  const taper = mostTaper(underarm, bicep);
  return Math.max(Math.min(cuff, bicep + taper), bicep - taper);
}

/** How much a tube's girth may change over a length: the cuff's bow is (girth/2)·(change/2)/(2·length). */
function mostTaper(length: Mm, girth: Mm): Mm {
  return Math.min(STEEPEST_TAPER * length, (8 * MOST_BOW * length * length) / girth);
}
