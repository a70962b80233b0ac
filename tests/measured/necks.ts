import type { Card } from '../../app/body';
import type { Draft, Ref } from '../../app/drafting/draft-types';
import { cutLength, edgeNamed, lengthNamed, made, reading } from './made';
import type { Rows } from './rows';

/** Bound edges: as drafted, and as they are when a strip is folded over what the edge still carries. */
export function boundEdges(card: Card): Rows {
  const [tee, tank] = [
    made(card, 'tee', { choices: { neck: 'bound' } }),
    made(card, 'tank', { choices: { neck: 'bound' } }),
  ];
  return [
    ...boundRows('tee neck', tee, 'binding-edge', reading(card, 'neck-girth')),
    ...boundRows('tank neck', tank, 'binding-edge', reading(card, 'neck-girth')),
    ...boundRows('tank armhole', tank, 'armhole-binding-edge', reading(card, 'arm-root-girth'), 1),
    ['strip cut', lengthNamed(tee ?? empty, 'binding', 'side')],
    ['shoulder of the tank, drafted', lengthNamed(tank ?? empty, 'front', 'shoulder')],
    ['shoulder of the tank, finished', tank && shoulderFinished(tank)],
  ];
}

const empty: Pick<Draft, 'pieces'> & Draft = { pieces: [] } as never;

function boundRows(place: string, draft: Draft | null, name: string, body: number, halves = 2): Rows {
  const seam = draft?.seams.find((each) => each.name === name);
  if (!draft || !seam) return [[`${place}: no such seam`, null]];
  const refs: readonly Ref[] = seam.first.some((ref) => ref.piece.includes('binding')) ? seam.second : seam.first;
  const edges = refs.flatMap((ref) => edgeNamed(draft, ref.piece, ref.edge) ?? []);
  const drafted = halves * edges.reduce((sum, edge) => sum + edge.length, 0);
  const finished = halves * edges.reduce((sum, edge) => sum + cutLength(edge), 0);
  return [
    [`${place}, body`, body],
    [`${place}, drafted`, drafted],
    [`${place}, finished`, finished],
    [`${place}, finished over body`, finished - body],
  ];
}

/** Between neck and armhole, when both are bound over what they carry. */
function shoulderFinished(draft: Draft): number {
  const carried = ['neckline', 'armhole'].map((edge) => edgeNamed(draft, 'front', edge)?.allowance ?? 0);
  return lengthNamed(draft, 'front', 'shoulder') + carried.reduce((sum, each) => sum + each, 0);
}

/** Collars: in how many pieces, whether one arc, and whether a collar of an opened neck is joined into a ring. */
export function collars(card: Card): Rows {
  return (['band', 'flat'] as const).flatMap((neck) =>
    (['none', 'slit', 'back', 'front'] as const).flatMap((opening): Rows => {
      const draft = made(card, 'tee', { choices: { neck, opening } });
      const ends = draft?.seams.find((each) => each.name === 'collar-end');
      const ring = ends && ends.join !== 'folded' && neck === 'band';
      return [[`${neck}, ${opening}: ends`, draft && (ring ? 'joined in a ring' : (ends?.join ?? 'none'))]];
    }),
  );
}

export function collarShapes(card: Card): Rows {
  const flat = made(card, 'tee', { choices: { neck: 'flat' } });
  const knit = made(card, 'tee', { choices: { neck: 'band' }, cloth: 'jersey' });
  const bandRatio = (draft: Draft) =>
    1 / (draft.seams.find((seam) => seam.name === 'collar-neck')?.ratio ?? Number.NaN);
  const collar = flat?.pieces.filter((piece) => piece.name.startsWith('collar')) ?? [];
  return [
    ['flat collar, pieces cut', collar.reduce((sum, piece) => sum + piece.copies, 0)],
    ['flat collar, on the fold', collar.map((piece) => String(piece.onFold)).join()],
    [
      'flat collar, outer edge over inner',
      flat && lengthNamed(flat, 'collar', 'round') / lengthNamed(flat, 'collar', 'neck'),
    ],
    ['flat collar, edges', collar.map((piece) => piece.edges.map((edge) => edge.name).join(' ')).join('; ')],
    ['knit band over neck', knit && bandRatio(knit)],
  ];
}
