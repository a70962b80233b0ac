import { type BodyKind, judge, type MeasureId, type Order, type Severity, type Traits } from '../../app/body';
import { bodyFrom } from '../../app/measuring';

export type Readings = { readonly [M in MeasureId]?: number | readonly number[] };

/** A breach of one row of the table, and what is just within it: other readings stay as they are. */
export type Case = {
  readonly flag: string;
  readonly severity: Severity;
  readonly breach: Readings;
  readonly nearMiss: Readings;
  readonly kind?: BodyKind;
  readonly traits?: Partial<Traits>;
};

/** Severity, code and measures (in alphabetical order, since the model orders them) of every flag. */
export function flagged(
  readings: Readings,
  { kind = 'upright', traits = {} }: Partial<Case> = {},
  order: Partial<Order> = {},
) {
  const lists = Object.fromEntries(Object.entries(readings).map(([id, value]) => [id, [value].flat()]));
  const body = bodyFrom({ toy: { body: kind, traits }, readings: lists });
  return judge(body, order, { readings: lists }).map(nameOf);
}

type Named = { readonly severity: Severity; readonly code: string; readonly measures: readonly string[] };
export const nameOf = ({ severity, code, measures }: Named) =>
  `${severity} ${code} ${[...measures].sort().join()}`.trim();

const impossible = (flag: string, breach: Readings, nearMiss: Readings, more: Partial<Case> = {}): Case => ({
  flag,
  severity: 'impossible',
  breach,
  nearMiss,
  ...more,
});
const unlikely = (flag: string, breach: Readings, nearMiss: Readings, more: Partial<Case> = {}): Case => ({
  ...impossible(flag, breach, nearMiss, more),
  severity: 'unlikely',
});
const note = (flag: string, breach: Readings, nearMiss: Readings, more: Partial<Case> = {}): Case => ({
  ...impossible(flag, breach, nearMiss, more),
  severity: 'note',
});
const round = { kind: 'round' } as const;
const level = { kind: 'four-legged' } as const;
/** A hem of 12 mm is turned up where the order says nothing. */
const HEMMED = [
  'body-length back-body-length side-length waist-to-hem arm-length inside-leg-length cape-length bib-length',
  'back-length under-length front-leg-length',
] as const;
const hems = HEMMED.flatMap((ids, n) =>
  ids.split(' ').map((id) => impossible(`hem-takes-all ${id}`, { [id]: 12 }, { [id]: 12.1 }, n === 0 ? {} : level)),
);

/** A bear of 21 readings that agree, for what the readings say of each other. */
const middling: Readings = {
  'head-girth': 400,
  'face-edge': 318,
  'hood-depth': 121,
  'neck-girth': 252,
  'chest-girth': 390,
  'body-girth': 425,
  'waist-girth': 398,
  'hip-girth': 428,
  'armhole-depth': 70,
  'arm-root-girth': 184,
  'upper-arm-girth': 178,
  'paw-girth': 165,
  'arm-length': 160,
  'underarm-length': 119,
  'body-length': 168,
  'back-body-length': 158,
  'side-length': 84,
  'body-rise': 102,
  'thigh-girth': 220,
};

export const cases: readonly Case[] = [
  impossible('not-a-length paw-girth', { 'paw-girth': 0 }, { 'paw-girth': 1 }),
  impossible(
    'armhole-takes-side armhole-depth,body-length',
    { 'armhole-depth': 72, 'body-length': 93.9 },
    { 'armhole-depth': 61, 'body-length': 94 },
  ),
  impossible(
    'neckline-under-hem body-length,front-neck-drop',
    { 'front-neck-drop': 40, 'body-length': 61.9 },
    { 'front-neck-drop': 40, 'body-length': 62 },
  ),
  impossible(
    'width-over-girth body-girth,front-width',
    { 'front-width': 400, 'body-girth': 400 },
    { 'front-width': 399, 'body-girth': 400 },
  ),
  impossible(
    'width-over-girth back-width,body-girth',
    { 'back-width': 400, 'body-girth': 400 },
    { 'back-width': 399, 'body-girth': 400 },
  ),
  impossible(
    'front-over-crotch crotch-length,front-crotch',
    { 'front-crotch': 300, 'crotch-length': 300 },
    { 'front-crotch': 299, 'crotch-length': 300 },
  ),
  impossible(
    'crotch-under-rise body-rise,crotch-length',
    { 'crotch-length': 134, 'body-rise': 90 },
    { 'crotch-length': 135, 'body-rise': 90 },
  ),
  impossible(
    'height-over-whole height,top-height',
    { height: 200, 'top-height': 200 },
    { height: 200, 'top-height': 199 },
    round,
  ),
  impossible(
    'height-over-whole base-height,height',
    { height: 200, 'base-height': 200 },
    { height: 200, 'base-height': 199 },
    round,
  ),
  impossible(
    'widths-off-girth back-width,body-girth,front-width',
    { 'front-width': 220, 'back-width': 295, 'body-girth': 428 },
    { 'front-width': 220, 'back-width': 293, 'body-girth': 428 },
  ),
  impossible(
    'ruler-over-half-girth arm-root-girth,armhole-depth',
    { 'armhole-depth': 92.5, 'arm-root-girth': 184 },
    { 'armhole-depth': 92, 'arm-root-girth': 184 },
  ),
  impossible(
    'ruler-over-half-girth chest-girth,side-inset',
    { 'side-inset': 196, 'chest-girth': 390 },
    { 'side-inset': 195, 'chest-girth': 390 },
  ),
  impossible(
    'ruler-over-half-girth chest-girth,leg-spread',
    { 'leg-spread': 196, 'chest-girth': 390 },
    { 'leg-spread': 195, 'chest-girth': 390 },
    level,
  ),
  impossible(
    'ruler-over-half-girth ear-base,head-girth',
    { 'ear-base': 201, 'head-girth': 400 },
    { 'ear-base': 200, 'head-girth': 400 },
  ),
  impossible(
    'ruler-over-half-girth body-girth,wing-base',
    { 'wing-base': 281, 'body-girth': 560 },
    { 'wing-base': 280, 'body-girth': 560 },
    round,
  ),
  ...hems,

  unlikely('unit-slip chest-girth', { ...middling, 'chest-girth': 390 / 2.54 }, middling),
  unlikely('tenfold chest-girth', { ...middling, 'chest-girth': 39 }, middling),
  unlikely('digit-doubled chest-girth', { ...middling, 'chest-girth': 2921 }, middling),
  unlikely('half-for-whole hem-girth', { ...middling, 'hem-girth': 206 }, { ...middling, 'hem-girth': 412 }),
  unlikely('whole-for-half back-width', { ...middling, 'back-width': 412 }, { ...middling, 'back-width': 206 }),
  unlikely('tape-end side-length', { ...middling, 'side-length': 1416 }, middling),
  unlikely('swapped arm-length,face-edge', { ...middling, 'arm-length': 318, 'face-edge': 160 }, middling),
  unlikely('proportion chest-girth', { ...middling, 'chest-girth': 640 }, { ...middling, 'chest-girth': 410 }),
  unlikely(
    'widths-off-girth back-width,body-girth,front-width',
    { 'front-width': 220, 'back-width': 231, 'body-girth': 428 },
    { 'front-width': 220, 'back-width': 229, 'body-girth': 428 },
  ),
  unlikely(
    'underarm-over-arm arm-length,underarm-length',
    { 'underarm-length': 139, 'arm-length': 128 },
    { 'underarm-length': 138, 'arm-length': 128 },
  ),
  unlikely(
    'armhole-off-root arm-root-girth,armhole-depth,side-inset',
    { 'armhole-depth': 72, 'arm-root-girth': 184, 'side-inset': 44 },
    { 'armhole-depth': 72, 'arm-root-girth': 184, 'side-inset': 42 },
  ),
  unlikely(
    'armhole-share armhole-depth,body-length',
    { 'armhole-depth': 99, 'body-length': 150 },
    { 'armhole-depth': 97, 'body-length': 150 },
  ),
  unlikely(
    'shoulders-over-chest chest-girth,neck-girth,shoulder-length',
    { 'shoulder-length': 53, 'neck-girth': 265, 'chest-girth': 390 },
    { 'shoulder-length': 52, 'neck-girth': 265, 'chest-girth': 390 },
  ),
  unlikely(
    'neck-over-head head-girth,neck-girth',
    { 'neck-girth': 301, 'head-girth': 300 },
    { 'neck-girth': 300, 'head-girth': 300 },
  ),
  unlikely(
    'paw-off-arm paw-girth,upper-arm-girth',
    { 'paw-girth': 201, 'upper-arm-girth': 100, 'arm-root-girth': 150, 'head-girth': 350 },
    { 'paw-girth': 200, 'upper-arm-girth': 100, 'arm-root-girth': 150, 'head-girth': 350 },
  ),
  unlikely(
    'foot-off-girth foot-girth,foot-length',
    { 'foot-length': 46, 'foot-girth': 235 },
    { 'foot-length': 47, 'foot-girth': 235 },
  ),
  unlikely(
    'ear-over-head ear-base,head-girth',
    { 'ear-base': 101, 'head-girth': 400 },
    { 'ear-base': 100, 'head-girth': 400 },
  ),
  unlikely(
    'crown-off-face crown-arc,face-edge',
    { 'crown-arc': 119, 'face-edge': 300 },
    { 'crown-arc': 120, 'face-edge': 300 },
  ),
  unlikely(
    'back-neck-under-front back-neck-drop,front-neck-drop',
    { 'back-neck-drop': 25.5, 'front-neck-drop': 25 },
    { 'back-neck-drop': 25, 'front-neck-drop': 25 },
  ),
  unlikely(
    'crotch-off-rise body-rise,crotch-length,hip-girth',
    { 'crotch-length': 226, 'body-rise': 95, 'hip-girth': 435 },
    { 'crotch-length': 228, 'body-rise': 95, 'hip-girth': 435 },
  ),
  ...(['top-girth', 'base-girth'] as const).map((id) =>
    unlikely(
      `girth-over-fullest ${[id, 'body-girth'].sort().join()}`,
      { [id]: 589, 'body-girth': 560 },
      { [id]: 588, 'body-girth': 560 },
      round,
    ),
  ),
  unlikely('tube-too-small upper-arm-girth', { 'upper-arm-girth': 39.9 }, { 'upper-arm-girth': 40 }),
  unlikely('tube-too-small front-leg-girth', { 'front-leg-girth': 39.9 }, { 'front-leg-girth': 40 }, level),
  unlikely('readings-apart paw-girth', { 'paw-girth': [160, 167] }, { 'paw-girth': [160, 166] }),

  note(
    'straight-topped-sleeve arm-length,underarm-length',
    { 'underarm-length': 136, 'arm-length': 128 },
    { 'underarm-length': 128, 'arm-length': 128 },
  ),
  note('seam-too-short shoulder-length', { 'shoulder-length': 7.9 }, { 'shoulder-length': 8 }),
  note('seam-too-short underarm-length', { 'underarm-length': 7.9 }, { 'underarm-length': 8 }),
];
