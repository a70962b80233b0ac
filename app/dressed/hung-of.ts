import type { Hung } from './clothes';
import type { Read } from './reader';

/** What hangs from the neck, by the piece that it is. */
export function hungOf({ piece, long, of }: Read): Hung | null {
  const bib = piece('bib');
  if (bib) {
    const low = bib.cutLine.filter(({ from }) => from.y > 0).map(({ from }) => from.x);
    return {
      kind: 'bib',
      long: long('bib', 'centre'),
      half: Math.max(0, ...low),
    };
  }
  if (piece('bow')) return { kind: 'bow', wide: long('bow', 'side') / 2, deep: long('bow', 'top') };
  if (piece('apron')) return apronOf(long, of);
  if (piece('bag-front'))
    return { kind: 'bag', long: long('bag-front', 'centre'), girth: 4 * long('bag-front', 'top') };
  if (piece('cape'))
    return {
      kind: 'cape',
      long: long('cape', 'side'),
      girth: 2 * long('cape', 'bottom'),
    };
  if (piece('scarf'))
    return {
      kind: 'scarf',
      long: long('scarf', 'side'),
      wide: long('scarf', 'top'),
    };
  return null;
}

function apronOf(long: Read['long'], body: Read['of']): Hung {
  const [bib, half, whole] = [long('apron', 'top'), long('apron', 'bottom'), long('apron', 'centre')];
  const side = long('apron', 'side');
  return { kind: 'apron', below: body('armhole-depth'), bib, bibHigh: whole - side, half, long: whole };
}
