import { useEffect, useState } from 'preact/hooks';
import { type BodyKind, bodyKinds } from '../../../body';
import type { GarmentId, Head } from '../../../drafting/catalogue';
import { noteHappening } from '../trouble/happened';

/** The garments' heads, fetched when first needed. How garments are made stays with the worker. */
type Garment = Head & { readonly id: GarmentId };

let loading: Promise<readonly Garment[]> | undefined;

export function loadGarments(): Promise<readonly Garment[]> {
  loading ??= import('../../../drafting/catalogue').then(({ heads }) => heads);
  return loading;
}

/** All garments; null until they are here. */
export function useGarments(): readonly Garment[] | null {
  const [garments, setGarments] = useState<readonly Garment[] | null>(null);
  useEffect(() => {
    loadGarments().then(setGarments, noteHappening);
  }, []);
  return garments;
}

/** The kinds of body that something can be made for. */
export const kindsDressed = (garments: readonly Garment[]): readonly BodyKind[] =>
  bodyKinds.filter((kind) => garments.some((garment) => garment.bodies.includes(kind)));

/** Less than this share of what the best dressed kind can wear is little. */
const LITTLE = 0.5;

/** The kinds that have little to wear, and how many garments that is. */
export function kindsWithLittle(garments: readonly Head[]): ReadonlyMap<BodyKind, number> {
  const worn = (kind: BodyKind) => garments.filter(({ bodies }) => bodies.includes(kind)).length;
  const most = Math.max(...bodyKinds.map(worn));
  return new Map(
    bodyKinds.map((kind) => [kind, worn(kind)] as const).filter(([, count]) => count > 0 && count < LITTLE * most),
  );
}
