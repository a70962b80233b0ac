import type { Mm } from '../../body';
import type { Notch, Ref, Seam } from '../draft-types';
import { cornerAt } from '../drawing/chain';
import type { Drawing } from '../drawing/draw';

/** Edges shorter than this are matched by their ends alone, mm; where notches tell a sleeve's front from its back, those shorter than the second. */
const SHORTEST_NOTCHED_MM = 40;
const SHORTEST_TOLD_MM = 14;
/** A notch nearer an end than this says nothing the end does not. */
const CLEAR_OF_ENDS_MM = 4;
/** A notch halfway along is left out where a break is as near as this: two marks side by side read as one. */
const CLEAR_OF_BREAKS_MM = 12;
const TOLD_CLEAR_OF_BREAKS_MM = 6;
/** A break in a chain whose corner is this near to straight is no corner: it is marked by a notch. */
const STRAIGHT = 0.2;

/** Both ends of a seam, as shares of it. */
const ENDS = [0, 1] as const;

export type Placed = { readonly piece: string; readonly notch: Notch };

/**
 * Notches pair: at the same share of both chains, so that ease spreads evenly between them. They stand halfway along
 * every longer edge of the first chain, wherever an edge of either chain ends on the other's middle, and where a seam ends
 * but its edge runs straight on: at an opening. `tells`: by them alone a piece's front is known from its back.
 */
export function notchesOf(seam: Seam, drawing: Drawing, tells = false): Placed[] {
  const shortest = tells ? SHORTEST_TOLD_MM : SHORTEST_NOTCHED_MM;
  const clear = tells ? TOLD_CLEAR_OF_BREAKS_MM : CLEAR_OF_BREAKS_MM;
  // Where both halves of a fold piece lie in one chain, a mark on the half would show twice: such strips go by their fold.
  if ([...seam.first, ...seam.second].some((ref) => ref.times)) return [];
  const [first, second] = [spansOf(seam.first, drawing), spansOf(seam.second, drawing)];
  const halves = first
    .filter((span) => span.to - span.from >= shortest)
    .map((span) => (span.from + span.to) / 2 / seam.firstLength);
  const breaks = [
    ...first.slice(1).map((span) => span.from / seam.firstLength),
    ...second.slice(1).map((span) => span.from / seam.secondLength),
  ];
  const apart = halves.filter((half) => breaks.every((each) => Math.abs(each - half) * seam.firstLength > clear));
  const longest = Math.max(seam.firstLength, seam.secondLength);
  return [...apart, ...breaks, ...ENDS].flatMap((share) => {
    const [one, two] = [
      markAt(first, share, seam.firstLength / longest, drawing),
      markAt(second, share, seam.secondLength / longest, drawing),
    ];
    const ticks = isBack([one.span.ref, two.span.ref], drawing) ? 2 : 1;
    return [one, two].flatMap(({ span, at, marked }) =>
      marked ? [{ piece: span.ref.piece, notch: { edge: span.ref.edge, at, ticks } as const }] : [],
    );
  });
}

type Span = { readonly ref: Ref; readonly from: Mm; readonly to: Mm };

function spansOf(refs: readonly Ref[], drawing: Drawing): Span[] {
  const spans: Span[] = [];
  for (const ref of refs) {
    const from = spans[spans.length - 1]?.to ?? 0;
    spans.push({ ref, from, to: from + drawing.edgeLength(ref.piece, ref.edge) });
  }
  return spans;
}

/**
 * The place at a share of a chain, as a distance along its edge; not marked where a corner of the piece shows it. `scale`: how long
 * the chain is beside the longer of the two, so that what is near an end of one is near the same end of the other.
 */
function markAt(
  spans: readonly Span[],
  share: number,
  scale: number,
  drawing: Drawing,
): { span: Span; at: Mm; marked: boolean } {
  const s = share * (spans[spans.length - 1]?.to ?? 0);
  const clear = CLEAR_OF_ENDS_MM * scale;
  const span = spans.find((each) => s <= each.to + 1e-6) ?? spans[spans.length - 1];
  if (!span) throw new RangeError('a seam without edges');
  const length = span.to - span.from;
  const walked = Math.min(Math.max(s - span.from, 0), length);
  const nearStart = walked < clear && bent(span.ref, 'start', drawing);
  const nearEnd = length - walked < clear && bent(span.ref, 'end', drawing);
  return { span, at: span.ref.back ? length - walked : walked, marked: !nearStart && !nearEnd };
}

function bent(ref: Ref, side: 'start' | 'end', drawing: Drawing): boolean {
  return Math.abs(cornerAt(ref, side, drawing) - Math.PI) > STRAIGHT;
}

/** Behind: on a piece of the back, or on a back edge of one that goes round, sewn to nothing in front. */
function isBack([one, two]: readonly [one: Ref, two: Ref], drawing: Drawing): boolean {
  const behind = one.edge.startsWith('back-') && !two.edge.startsWith('front-');
  return behind || drawing.drawn.get(one.piece)?.row.back === true;
}
