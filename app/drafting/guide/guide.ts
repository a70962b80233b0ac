import type { Mm } from '../../body';
import type { Draft, Ref, Seam } from '../draft-types';
import { clothOf, isKnit } from '../sizes/cloths';
import { closingOf } from './closing';
import { finishesOf } from './finishes';
import type { Guide, GuideStep } from './guide-types';
import { isHollow } from './hollow';
import { isSelf, kindOf, sidesOf } from './kind';
import { type Known, knownOf } from './known';
import { isFlat, lengthOf, notesOf, type Standing } from './notes';
import { passesOf } from './order';
import { runsOverFold } from './runs';
import { STAY, sceneOf } from './scene';
import { snipsOf } from './snips';

/** The sewing of a draft: what is cut, the steps in their order, and how every edge is finished in the end. */
export function guideOf(draft: Draft): Guide {
  const known = knownOf(draft);
  const passes = passesOf(known);
  const closing = closingOf(passes, known);
  const steps = passes.flatMap((seams, index) => {
    const done = passes.slice(0, index).flat();
    const standing = {
      closes: index === closing,
      closed: closing >= 0 && index > closing,
      next: passes[index + 1] ?? [],
    };
    return [...snipped(seams, done, known), stepOf(seams, done, standing, known)];
  });
  return {
    cut: draft.pieces.map(({ name, copies, mirrored, onFold, of }) => ({
      ...{ piece: name, copies, mirrored, onFold },
      ...(of ? { of } : {}),
    })),
    steps: [...stayed(known), ...steps],
    finishes: finishesOf(known),
  };
}

function stepOf(
  seams: readonly Seam[],
  done: readonly Seam[],
  standing: Omit<Standing, 'done'>,
  known: Known,
): GuideStep {
  const [head] = seams;
  if (!head) throw new RangeError('a step sews nothing');
  const kind = kindOf(longest(seams), known);
  const edges = seams.flatMap(({ first, second }) => [...second, ...first]).flatMap((ref) => known.edge(ref) ?? []);
  return {
    id: head.name,
    kind,
    seams,
    ...sidesOf(seams),
    allowance: boundBy(head, known) ?? Math.max(0, ...edges.map(({ allowance }) => allowance)),
    ...(kind === 'join' && seams.every(isSelf) && isOne(head, known) ? { folds: true as const } : {}),
    ...(kind === 'casing' && isFlat(head.first, done, known) ? { flat: true as const } : {}),
    ...(kind === 'casing' && sharesElastic(known) ? { shares: true as const } : {}),
    length: lengthOf(seams, known) * (seams.every((seam) => seam.sewn === 2 && !runsOverFold(seam, known)) ? 2 : 1),
    notes: notesOf(kind, seams, { ...standing, done }, known),
    scene: sceneOf(seams, done, known),
  };
}

/** There is one of it, whatever was sewn to it. */
const isOne = ({ first }: Seam, known: Known): boolean => first.some(({ piece }) => known.piece(piece).copies === 1);

/** One elastic lies at no seam alone: it runs through several. */
const sharesElastic = ({ draft }: Known): boolean =>
  draft.notions.some(
    ({ kind, place }) => kind === 'elastic' && !draft.seams.some(({ name }) => name.startsWith(place)),
  );

/** Folded over an edge, a strip shows this share of its width on either side. */
const BOUND_AT = 1 / 4;

/** A strip that is folded over a raw edge is sewn to it at a quarter of its width, mm: neither has an allowance. Null elsewhere. */
function boundBy({ join, first, second }: Seam, known: Known): Mm | null {
  const [strip] = first;
  if (!strip || join === 'folded' || join === 'laid') return null;
  if (![...first, ...second].every((ref) => known.edge(ref)?.role === 'edge')) return null;
  const { edges } = known.piece(strip.piece);
  const at = edges.findIndex(({ name }) => name === strip.edge);
  return (edges[(at + 1) % edges.length]?.length ?? 0) * BOUND_AT;
}

/** Of seams sewn in one go the one that asks for most: what is gathered in is gathered all along. */
const longest = (seams: readonly Seam[]): Seam => seams.reduce((most, each) => (each.ratio > most.ratio ? each : most));

/** What is turned at a hollow corner is snipped into first: a step of its own, or nobody would see where. */
function snipped(seams: readonly Seam[], done: readonly Seam[], known: Known): readonly GuideStep[] {
  const corners = snipsOf(seams, done, known);
  const [head] = seams;
  if (corners.length === 0 || !head) return [];
  const first = [...new Set(corners.map(({ piece }) => piece))];
  const edges = corners.flatMap(({ piece, edges: [edge] }) => known.edge({ piece, edge }) ?? []);
  const seam: Seam = { ...head, first: first.map((piece) => ({ piece, edge: '' })), second: [] };
  return [
    {
      id: `snip-${head.name}`,
      kind: 'snip',
      seams: [],
      ...{ first, second: [] },
      allowance: Math.max(...edges.map(({ allowance }) => allowance)),
      length: 0,
      notes: [],
      scene: sceneOf([seam], done, known, corners),
    },
  ];
}

/** An edge that is bound has no allowance to hold it in: so far from it the strip still covers the stitches (common practice, no source). */
const STAYED_FROM_BOUND_MM: Mm = 3;

/** Hollow edges of woven cloth give before they are sewn: a line of stitches in each piece holds them. */
function stayed(known: Known): readonly GuideStep[] {
  const cloth = clothOf(known.draft.order);
  if (!cloth || isKnit(cloth) || !cloth.frays) return [];
  // What is laid along another edge is held by that one.
  const laid = known.draft.seams.flatMap(({ join, second }) => (join === 'laid' ? second : []));
  const isLaid = ({ piece, edge }: Ref) => laid.some((ref) => ref.piece === piece && ref.edge === edge);
  const refs = known.draft.pieces.flatMap(({ name, edges }): Ref[] =>
    known.isStrip(name)
      ? []
      : edges.flatMap(({ name: edge, path }) =>
          isHollow(path) && !isLaid({ piece: name, edge }) ? [{ piece: name, edge }] : [],
        ),
  );
  if (refs.length === 0) return [];
  const length = refs.reduce((sum, ref) => sum + (known.edge(ref)?.length ?? 0), 0);
  const seam: Seam = {
    name: STAY,
    join: 'folded',
    sewn: 2,
    first: refs,
    second: [],
    firstLength: length,
    secondLength: length,
    ratio: 1,
  };
  return [
    {
      id: STAY,
      kind: 'stay',
      seams: [],
      ...sidesOf([seam]),
      allowance: Math.max(...refs.map((ref) => known.edge(ref)?.allowance ?? 0)),
      length: 2 * length,
      notes: refs.some((ref) => known.edge(ref)?.allowance === 0)
        ? [{ code: 'stay-bound', values: { far: STAYED_FROM_BOUND_MM } }]
        : [],
      scene: sceneOf([seam], [], known),
    },
  ];
}
