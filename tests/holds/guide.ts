import type { Draft, Seam } from '../../app/drafting/draft-types';
import { type Guide, type GuideStep, guideOf } from '../../app/drafting/guide';

/** What is wrong with how a draft is led through: one line each, none where a maker could follow it. */
export function guideFaults(draft: Draft): readonly string[] {
  const guide = guideOf(draft);
  return [
    ...usesOnce(draft, guide),
    ...finishes(draft, guide),
    ...crossings(draft, guide),
    ...gaps(guide),
    ...tunnels(draft, guide),
    ...elastics(draft, guide),
    ...pictures(guide),
  ];
}

/** Casings named after their pieces, and where their elastic is said to lie. */
const PLACED: Readonly<Record<string, string>> = {
  'skirt-casing': 'waist',
  'dress-front-casing': 'dress-neck',
  'dress-back-casing': 'dress-neck',
};

/** Every elastic is drawn in at a step: in a casing that is turned, or behind a strip. */
function elastics({ notions }: Draft, { steps }: Guide): readonly string[] {
  const at = (place: string) =>
    steps.filter(({ seams }) =>
      seams.some(({ name }) => name === place || name.startsWith(`${place}-`) || PLACED[name] === place),
    );
  const told = ({ kind, notes }: GuideStep) =>
    kind === 'casing' || notes.some(({ code }) => code.startsWith('elastic'));
  return notions.flatMap(({ kind, place }) =>
    kind === 'elastic' && !at(place).some(told) ? [`no step draws in the elastic of ${place}`] : [],
  );
}

function usesOnce(draft: Draft, { steps }: Guide): readonly string[] {
  const sewn = steps.flatMap(({ seams }) => seams.map(({ name }) => name));
  const wanted = draft.seams.map(({ name }) => name);
  return sewn.toSorted().join() === wanted.toSorted().join() ? [] : [`sews ${sewn.join()} for ${wanted.join()}`];
}

function finishes(draft: Draft, guide: Guide): readonly string[] {
  const named = new Set(guide.finishes.map(({ piece, edge }) => `${piece}.${edge}`));
  return draft.pieces.flatMap(({ name, edges }) =>
    edges.flatMap((edge) => (named.has(`${name}.${edge.name}`) ? [] : [`no finish for ${name}.${edge.name}`])),
  );
}

const joins = ({ join }: Seam) => join !== 'folded' && join !== 'laid';
const keys = (refs: Seam['first']) => refs.map(({ piece, edge }) => `${piece}.${edge}`);
const placeOf = ({ steps }: Guide, seam: string) =>
  steps.findIndex(({ seams }) => seams.some(({ name }) => name === seam));

/** A side of a seam that passes from one piece to the next is sewn once those two are joined where it passes. */
function crossings(draft: Draft, guide: Guide): readonly string[] {
  return draft.seams.filter(joins).flatMap((late) =>
    [late.first, late.second].flatMap((side) =>
      side.slice(1).flatMap((ref, index) => {
        const before = side[index];
        if (!before || before.piece === ref.piece) return [];
        const beside = [besideEnd(draft, before, 'stop'), besideEnd(draft, ref, 'start')] as const;
        const early = draft.seams.find(
          (seam) =>
            joins(seam) &&
            seam !== late &&
            [
              [seam.first, seam.second],
              [seam.second, seam.first],
            ].some(([a = [], b = []]) => keys(a).includes(beside[0]) && keys(b).includes(beside[1])),
        );
        return early && placeOf(guide, early.name) > placeOf(guide, late.name)
          ? [`${late.name} before ${early.name}, which it crosses`]
          : [];
      }),
    ),
  );
}

/** The edge beside one end of an edge, as a seam walks along it. */
function besideEnd(draft: Draft, ref: Seam['first'][number], end: 'start' | 'stop'): string {
  const [previous = '', next = ''] = besideOf(draft, ref);
  return (end === 'stop') === (ref.back === true) ? previous : next;
}

function besideOf({ pieces }: Draft, { piece, edge }: Seam['first'][number]): readonly string[] {
  const edges = pieces.find(({ name }) => name === piece)?.edges ?? [];
  const at = edges.findIndex(({ name }) => name === edge);
  return [edges.at(at - 1), edges[(at + 1) % edges.length]].map((each) => `${piece}.${each?.name}`);
}

/** What is bagged out is closed once all that is turned with it is sewn. */
function gaps(guide: Guide): readonly string[] {
  return guide.steps.flatMap((gap, at) => {
    if (gap.kind !== 'gap') return [];
    const pieces = new Set([...gap.first, ...gap.second]);
    return guide.steps
      .slice(at + 1)
      .filter((step) => step.kind === 'bag' && [...step.first, ...step.second].every((piece) => pieces.has(piece)))
      .map((step) => `${gap.id} is closed before ${step.id} is turned`);
  });
}

/**
 * Two layers sewn together on both sides of a seam that is closed already make a tunnel. Only halves can be pulled through it: where
 * nothing opens before or behind, the tunnel is closed last. What is turned through a gap is sewn shut at the gap's own edge.
 */
function tunnels(draft: Draft, guide: Guide): readonly string[] {
  const stepAt = (key: string, kind: GuideStep['kind'], skip: readonly string[]) =>
    guide.steps.findIndex(
      (step) =>
        step.kind === kind &&
        step.seams.some((seam) => keys([...seam.first, ...seam.second]).includes(key)) &&
        !step.seams.some((seam) => keys([...seam.first, ...seam.second]).some((each) => skip.includes(each))),
    );
  const gap = guide.steps
    .filter(({ kind }) => kind === 'gap')
    .flatMap(({ seams }) => seams.flatMap(({ first }) => first));
  const besideGap = gap.flatMap((ref) => besideOf(draft, ref));
  return draft.pieces
    .filter(({ mirrored }) => !mirrored)
    .flatMap(({ name: piece, edges }) =>
      edges.flatMap(({ name: edge }) => {
        const bags = besideOf(draft, { piece, edge }).map((key) => stepAt(key, 'bag', besideGap));
        const seam = draft.seams.find(({ first, second }) => keys([...first, ...second]).includes(`${piece}.${edge}`));
        const halves = [...(seam?.first ?? []), ...(seam?.second ?? [])].some(
          (ref) => draft.pieces.find(({ name }) => name === ref.piece)?.mirrored,
        );
        const joined = stepAt(`${piece}.${edge}`, 'join', []);
        return !halves && joined >= 0 && bags.every((at) => at >= 0) && joined < Math.max(...bags)
          ? [`${piece}.${edge} is closed before what is on both sides of it is turned`]
          : [];
      }),
    );
}

/** Shows just the pieces that are joined, and as sewn just what has been. */
function pictures({ steps }: Guide): readonly string[] {
  const done = new Set<string>();
  return steps.flatMap((step) => {
    const faults = pictured(step, done);
    for (const { first, second } of step.seams) for (const key of [...keys(first), ...keys(second)]) done.add(key);
    return faults;
  });
}

function pictured({ id, seams, scene }: GuideStep, done: ReadonlySet<string>): readonly string[] {
  const now = new Set(seams.flatMap(({ first, second }) => [...keys(first), ...keys(second)]));
  const wanted = new Set([...now].map((key) => key.split('.')[0]));
  const shown = new Set(scene.parts.map(({ piece }) => piece));
  const missing = [...wanted].filter((piece) => piece !== undefined && !shown.has(piece));
  const wrong = scene.parts.flatMap(({ piece, sewnEdges }) => {
    const expected = [...done].filter((key) => key.startsWith(`${piece}.`) && !now.has(key)).toSorted();
    const drawn = sewnEdges.map((edge) => `${piece}.${edge}`).toSorted();
    return expected.join() === drawn.join()
      ? []
      : [`${id} shows ${drawn.join() || 'nothing'} sewn for ${expected.join()}`];
  });
  const outside = scene.parts.some(({ outline }) =>
    outline.some(({ from: { x, y } }) => !(x > -1 && y > -1 && x < scene.width + 1 && y < scene.height + 1)),
  );
  return [
    ...missing.map((piece) => `${id} does not show ${piece}`),
    ...wrong,
    ...(outside ? [`${id} runs out of its picture`] : []),
  ];
}
