import { BAND_TOP, type FacingTapes } from './front-tapes';

/** Every measure of an upright toy that is taken from behind. */
export const uprightBackTapes: FacingTapes = {
  'back-width': { way: { lay: 'across', of: 'trunk', at: 'tummy', toward: 'base' }, shot: 'trunk' },
  'across-shoulders': { way: { lay: 'over', through: ['shoulderEndLeft', 'napeLow', 'shoulderEnd'] }, shot: 'trunk' },
  'waist-to-tail': { way: { lay: 'over', through: ['waistFront', 'tailTop'] }, shot: 'seat', needs: 'tail' },
  'tail-base-girth': {
    way: { lay: 'round', of: 'tail', at: 'tailBase', toward: 'tailBaseToward' },
    shot: 'seat',
    needs: 'tail',
  },
  'tail-girth': {
    way: { lay: 'round', of: 'tail', at: 'tailThick', toward: 'tailThickToward' },
    shot: 'seat',
    needs: 'tail',
  },
  'back-body-length': {
    way: { lay: 'over', through: ['neckFront', 'chest', 'tummy', 'hemFront'] },
    guides: [{ of: 'trunk', at: 'hem', toward: 'base' }],
    shot: 'trunk',
  },
  'back-neck-drop': {
    way: { lay: 'over', through: ['neck', 'neckDrop'] },
    guides: [
      ['neckEndLeft', 'neckEnd'],
      ['neckEndLeft', 'neckDrop', 'neckEnd'],
    ],
    shot: 'head',
  },
  'strap-length': {
    way: { lay: 'over', through: ['strapBack', 'shoulderMiddle'], behind: ['shoulderMiddle', 'strapFront'] },
    guides: BAND_TOP,
    shot: 'band',
  },
  'cape-length': {
    way: { lay: 'over', through: ['neckFront', 'capeMiddle', 'capeHem'] },
    guides: [['neckEndLeft', 'capeShoulderLeft', 'capeSideLeft', 'capeHem', 'capeSide', 'capeShoulder', 'neckEnd']],
    shot: 'trunk',
  },
};
