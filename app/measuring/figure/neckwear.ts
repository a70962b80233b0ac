import { point } from '../../body/point';

type Hung = {
  readonly crease: number;
  readonly neckHalf: number;
  readonly bib: number;
  readonly bibHalf: number;
  readonly scarf: number;
};

/** Where a bib and a scarf hang from the neck's crease, from the front: how long each is, and half widths. */
export function neckwear({ crease, neckHalf, bib, bibHalf, scarf }: Hung) {
  const hangs = Math.min(0.5 * neckHalf, 0.8 * bibHalf);
  const at = (x: number, below: number) => point(x, crease + below);
  return {
    neckFront: at(0, 0.2 * neckHalf),
    neckEnd: at(neckHalf, 0),
    neckEndLeft: at(-neckHalf, 0),
    bibHem: at(0, bib),
    bibSide: at(bibHalf, 0.6 * bib),
    bibSideLeft: at(-bibHalf, 0.6 * bib),
    scarfEndLeft: at(-hangs, scarf),
    scarfLeft: at(-0.62 * neckHalf, 0.4 * scarf),
    scarfNeckLeft: at(-0.95 * neckHalf, 2),
    scarfBehind: at(0, -9),
    scarfNeckRight: at(0.95 * neckHalf, 2),
    scarfRight: at(0.62 * neckHalf, 0.4 * scarf),
    scarfEndRight: at(hangs, scarf),
  };
}

/** The rows of both. */
export const neckwearTapes = {
  'bib-length': {
    way: { lay: 'over', through: ['neckFront', 'bibHem'] },
    guides: [['neckEndLeft', 'bibSideLeft', 'bibHem', 'bibSide', 'neckEnd']],
  },
  'scarf-length': {
    way: {
      lay: 'over',
      through: ['scarfEndLeft', 'scarfLeft', 'scarfNeckLeft'],
      behind: ['scarfNeckLeft', 'scarfBehind', 'scarfNeckRight'],
      again: ['scarfNeckRight', 'scarfRight', 'scarfEndRight'],
    },
  },
} as const;
