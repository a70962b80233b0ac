import type { Edge, Piece } from '../draft-types';

/** Edges that are a garment's lower end where they are turned up; some languages have a word for that hem alone (bajo, 裾). */
const lower: readonly string[] = ['hem', 'hem-end', 'bottom', 'bottom-end'];

/** Turned at both ends: neither is the lower one. */
const endsAlike: readonly string[] = ['scarf', 'wrist-warmer'];

/** What edges are called that a beginner asks for by name; what ends in a hem is a hem, whatever it is called in the data. */
const named: Readonly<Record<string, string>> = {
  neckline: 'neck',
  neck: 'neck',
  'neck-front': 'neck',
  'neck-back': 'neck',
  shoulder: 'shoulder',
  armhole: 'armhole',
  side: 'side',
  'front-inseam': 'inseam',
  'back-inseam': 'inseam',
  'front-crotch': 'front-middle',
  'back-crotch': 'back-middle',
  'back-above': 'back-middle',
  hem: 'waist',
  top: 'waist',
  waist: 'waist',
  'front-waist': 'front-waist',
  'back-waist': 'back-waist',
  'front-side': 'side',
  'back-side': 'side',
  cuff: 'cuff',
  face: 'face',
  crown: 'crown',
  nape: 'nape',
  'dart-front': 'dart',
  'dart-back': 'dart',
  'front-raglan': 'to-front',
  'back-raglan': 'to-back',
  'front-cap': 'to-front',
  'back-cap': 'to-back',
  underarm: 'underarm',
  'front-underarm': 'front-underarm',
  'back-underarm': 'back-underarm',
};

/** What a beginner calls an edge, as a key of words. A top edge is a waist on a skirt alone; `hem` names the bodice's lower edge, sewn to a skirt where it is no hem. */
export function edgeName({ name, role }: Pick<Edge, 'name' | 'role'>, piece: Piece): string | undefined {
  if (role === 'closure') return 'closure';
  if (role === 'hem' && name !== 'cuff' && name !== 'face')
    return lower.includes(name) && !endsAlike.includes(piece.name) ? 'hem' : 'turned';
  if (name === 'hem' && role !== 'seam') return 'hem';
  if (name === 'top' && !piece.name.startsWith('skirt')) return undefined;
  return named[name];
}
