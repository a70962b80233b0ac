import type { Measure } from '../measure';
import { row } from './row';

/** What the maker chooses; the typical value is what is suggested. */
export const wishes = [
  row('body-length', 'wish', ['wish', 'front'], 'length', [150, 0, 0], 0.05, {
    leans: { top: 0.1 },
    governs: ['frontLength'],
  }),
  row('back-body-length', 'wish', ['wish', 'back'], 'length', [139, 0, 0], 0.05, {
    leans: { top: 0.1 },
    governs: ['backLength'],
  }),
  row('side-length', 'wish', ['wish', 'side'], 'length', [72, 0, 0], 0.1, {
    leans: { top: 0.17 },
    governs: ['sideLength'],
  }),
  row('front-neck-drop', 'wish', ['wish', 'front'], 'trunk', [46, 0, 0], 0.23, { governs: ['frontNeckDrop'] }),
  row('back-neck-drop', 'wish', ['wish', 'back'], 'trunk', [16, 0, 0], 0.2, { governs: ['backNeckDrop'] }),
  row('arm-length', 'wish', ['wish', 'front'], 'arm', [130, 0, 0], 0.06, { governs: ['sleeveLength'] }),
  row('underarm-length', 'wish', ['wish', 'front'], 'arm', [96, 0, 0], 0.25, {
    leans: { arm: 0.29 },
    governs: ['underarmLength'],
  }),
  row('bodice-height', 'wish', ['wish', 'front'], 'wish', [60, 0, 0], 0.24, { leans: { bodice: 0.15 } }),
  row('strap-length', 'wish', ['wish', 'front'], 'wish', [116, 0, 0], 0.2, {
    leans: { bodice: -0.1 },
    after: ['bodice-height'],
  }),
  row('waist-to-hem', 'wish', ['wish', 'front'], 'stride', [158, 0, 70], 0.17),
  row('inside-leg-length', 'wish', ['wish', 'front'], 'stride', [90, 0, 0], 0.29),
  row('cape-length', 'wish', ['wish', 'back'], 'wish', [160, 150, 110], 0.14),
  row('bib-length', 'wish', ['wish', 'front'], 'wish', [85, 80, 83], 0.14),
  row('scarf-length', 'wish', ['wish', 'front'], 'wish', [650, 620, 880], 0.22),
  row('back-length', 'wish', ['wish', 'back'], 'length', [0, 260, 0], 0.1),
  row('under-length', 'wish', ['wish', 'side'], 'length', [0, 78, 0], 0.32, { leans: { leg: -0.08 } }),
  row('front-leg-length', 'wish', ['wish', 'side'], 'stride', [0, 70, 0], 0.13),
] as const satisfies readonly Measure[];
