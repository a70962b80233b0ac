import type { Mm } from '../../body';
import type { Role } from '../draft-types';
import type { Drawing } from '../drawing/draw';
import { type Garment, refsOf, seamsIn } from '../rows/garment';
import { edgeAllowance } from './edge-allowance';

/** A hem that is turned in one goes as far all round as its most curved part can: allowances by `piece.edge`, mm. */
export function evenHems(
  garment: Garment,
  drawing: Drawing,
  allowances: Readonly<Record<Role, Mm>>,
): ReadonlyMap<string, Mm> {
  const turned = seamsIn(garment, drawing).filter((row) => row.kind === 'folded');
  return new Map(
    turned.flatMap((row) => {
      const hems = refsOf(row.first, drawing).flatMap(({ piece, edge }) => {
        const drawn = drawing.drawn.get(piece);
        const path = drawn?.shape.edges[edge];
        const isHem = drawn?.row.roles(drawing.choices)[edge] === 'hem';
        return path && isHem
          ? [{ name: `${piece}.${edge}`, most: edgeAllowance('hem', path, allowances, drawn.row.narrowHem) }]
          : [];
      });
      const least = Math.min(...hems.map(({ most }) => most));
      return hems.map(({ name }) => [name, least] as const);
    }),
  );
}
