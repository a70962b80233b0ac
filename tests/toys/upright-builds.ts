/** Bounds of a ratio. */
type Range = readonly [low: number, high: number];

/**
 * How toys of a build are proportioned, for drawing random ones: shares of the height, but for girths (shares of the
 * fullest), neck (of the chest), armhole and rise (of the length). Imagined; wide enough to hold the published bodies, and
 * made apart from the app's own proportions.
 */
export type BuiltAs = {
  readonly [P in
    | 'across'
    | 'head'
    | 'neck'
    | 'waist'
    | 'hip'
    | 'length'
    | 'armhole'
    | 'arm'
    | 'rise'
    | 'waistAt'
    | 'thigh'
    | 'stride']: Range;
};

/** Toys of no build in particular. */
export const ANY_BUILD = 'any';

const table: Readonly<Record<string, BuiltAs>> = {
  any: {
    across: [0.1, 0.2],
    head: [0.11, 0.21],
    neck: [0.55, 0.84],
    waist: [0.86, 1],
    hip: [0.9, 1.08],
    length: [0.3, 0.42],
    armhole: [0.4, 0.54],
    arm: [0.2, 0.4],
    rise: [0.5, 0.78],
    waistAt: [0.5, 0.85],
    thigh: [0.4, 0.62],
    stride: [0.14, 0.34],
  },
  'plush-bear': {
    across: [0.13, 0.2],
    head: [0.12, 0.18],
    neck: [0.55, 0.8],
    waist: [0.88, 1],
    hip: [0.9, 1.08],
    length: [0.32, 0.46],
    armhole: [0.34, 0.5],
    arm: [0.2, 0.46],
    rise: [0.5, 0.75],
    waistAt: [0.5, 0.85],
    thigh: [0.4, 0.62],
    stride: [0.13, 0.36],
  },
  'long-limbed': {
    across: [0.08, 0.13],
    head: [0.075, 0.13],
    neck: [0.48, 0.68],
    waist: [0.85, 1],
    hip: [0.9, 1.08],
    length: [0.27, 0.4],
    armhole: [0.28, 0.44],
    arm: [0.28, 0.44],
    rise: [0.48, 0.72],
    waistAt: [0.5, 0.85],
    thigh: [0.4, 0.58],
    stride: [0.26, 0.44],
  },
  'play-doll': {
    across: [0.09, 0.14],
    head: [0.075, 0.12],
    neck: [0.44, 0.64],
    waist: [0.72, 0.96],
    hip: [0.92, 1.12],
    length: [0.36, 0.47],
    armhole: [0.21, 0.32],
    arm: [0.24, 0.36],
    rise: [0.48, 0.68],
    waistAt: [0.34, 0.66],
    thigh: [0.38, 0.54],
    stride: [0.28, 0.42],
  },
  'baby-doll': {
    across: [0.13, 0.18],
    head: [0.11, 0.155],
    neck: [0.48, 0.68],
    waist: [0.86, 1],
    hip: [0.88, 1.06],
    length: [0.4, 0.54],
    armhole: [0.23, 0.36],
    arm: [0.27, 0.42],
    rise: [0.46, 0.68],
    waistAt: [0.34, 0.66],
    thigh: [0.4, 0.58],
    stride: [0.26, 0.44],
  },
  'big-headed': {
    across: [0.11, 0.17],
    head: [0.16, 0.25],
    neck: [0.6, 0.96],
    waist: [0.88, 1],
    hip: [0.9, 1.08],
    length: [0.23, 0.36],
    armhole: [0.36, 0.54],
    arm: [0.13, 0.28],
    rise: [0.5, 0.75],
    waistAt: [0.5, 0.85],
    thigh: [0.4, 0.62],
    stride: [0.09, 0.24],
  },
};

export const builtAs = (build: string): BuiltAs => table[build] ?? builtAs(ANY_BUILD);
export const uprightBuilds = Object.keys(table).filter((build) => build !== ANY_BUILD);
