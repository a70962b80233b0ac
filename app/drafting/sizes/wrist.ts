import type { Sleeves, Wrists } from '../heads/choices';
import { LEAST_SIDE_MM } from './bodice';
import { maker } from './maker';
import { WRIST_RIB_MM } from './scale';
import { sewnCuff } from './sleeve';
import type { Wearer } from './wearer';

/** A sleeve that ends in an elastic, or on a finished cuff, is as wide there as above it; one that ends in rib is as much shorter, where its length allows. */
export const wristSizes = maker(
  ['bicep', 'cuff', 'cuffBand', 'underarmLength', 'sleeveLength'],
  ['bicep', 'cuff', 'cuffBand', 'underarmLength', 'sleeveLength'],
  (wearer: Wearer<Sleeves & Wrists>, { bicep, cuff, cuffBand, underarmLength, sleeveLength }) => {
    const { sleeve, armhole, wrist } = wearer.choices;
    const ends = sleeve === 'puffed' ? 'turned' : wrist;
    const even = Math.max(cuff, bicep);
    const room = underarmLength - wearer.hem - LEAST_SIDE_MM;
    const by = ends === 'rib' ? Math.max(Math.min(WRIST_RIB_MM[wearer.scale], room), 0) : 0;
    // Cut in one, its cuff lies aslant and is drawn to its underarm.
    const ribbed = by > 0 && armhole !== 'in-one' ? sewnCuff(cuff, bicep, underarmLength - by) : cuff;
    const wide = ends === 'elastic' || ends === 'ready' ? even : ribbed;
    return {
      sizes: {
        bicep: ends === 'ready' ? even : bicep,
        cuff: wide,
        // A puffed sleeve is gathered into its band.
        cuffBand: sleeve === 'puffed' ? cuffBand : Math.max(cuffBand, wide / 2),
        underarmLength: underarmLength - by,
        sleeveLength: sleeveLength - by,
      },
    };
  },
);
