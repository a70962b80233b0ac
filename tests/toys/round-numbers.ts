import type { MeasureId, Traits } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft, Edge } from '../../app/drafting/draft-types';
import { bodyFrom } from '../../app/measuring';

/** An invented bear whose numbers are easily reckoned with, mm: its clothes can be checked with a pencil. */
const bear: { readonly [M in MeasureId]?: number } = {
  'chest-girth': 400,
  'body-girth': 440,
  'hip-girth': 420,
  'waist-girth': 390,
  'head-girth': 460,
  'neck-girth': 260,
  'face-edge': 300,
  'crown-arc': 190,
  'hood-depth': 120,
  'front-width': 220,
  'shoulder-length': 35,
  'armhole-depth': 75,
  'body-length': 180,
  'upper-arm-girth': 150,
  'paw-girth': 140,
  'arm-length': 140,
  'underarm-length': 105,
  'underarm-to-waist': 60,
  'bodice-height': 60,
  'strap-length': 120,
  'waist-to-hem': 120,
  'ear-base': 50,
  'ear-girth': 130,
  'ear-inset': 45,
  'ear-from-face-edge': 30,
};

export type Asked = {
  readonly garment: string;
  readonly choices?: Readonly<Record<string, string | boolean | number>>;
  readonly cloth?: string;
  readonly fit?: string;
  readonly traits?: Partial<Traits>;
  readonly readings?: { readonly [M in MeasureId]?: number };
  readonly corrections?: Readonly<Record<string, number>>;
};

/** The bear's garment, its shoulders square and its stuffing soft unless told otherwise. Throws where it is refused. */
export function bearDraft({ garment, choices = {}, cloth, fit, traits, readings, corrections }: Asked): Draft {
  const full = fullOrder({ garment, choices, ...(cloth ? { cloth } : {}), ...(fit ? { fit } : {}) }, '2026-11-20');
  if (!full.ok) throw new Error(full.fault.where);
  const lengths = Object.entries({ ...bear, ...readings }).map(([id, length]) => [id, [length]]);
  const body = bodyFrom({
    toy: { body: 'upright', traits: { shoulders: 'square', stuffing: 'soft', ...traits } },
    readings: Object.fromEntries(lengths),
    ...(corrections ? { corrections } : {}),
  });
  const outcome = draft(body, full.order, full.garment, 'Bear');
  if (!outcome.ok) throw new Error(outcome.flags.map((flag) => flag.code).join(', '));
  return outcome.draft;
}

/** An edge by its piece and name. Throws where there is none. */
export function edgeOf(made: Draft, piece: string, name: string): Edge {
  const found = made.pieces.find((each) => each.name === piece)?.edges.find((each) => each.name === name);
  if (!found) throw new RangeError(`${piece}.${name}`);
  return found;
}
