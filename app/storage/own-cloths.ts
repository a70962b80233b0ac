import * as v from 'valibot';
import type { OwnCloth } from '../body';
import { newId } from './ids';
import { type Settings, setSetting } from './settings';
import { tidyName } from './tidy';

/** A cloth of the maker's own, and the preset it is otherwise like. */
export type KeptCloth = OwnCloth & {
  readonly id: string;
  readonly like: string;
};

/** Each is a setting of its own, as text: so it is in every backup, and of two changes the later counts. One forgotten is kept as false. */
const KEY = 'cloth-';

const shape = v.object({
  name: v.pipe(v.string(), v.minLength(1)),
  like: v.string(),
  stretch: v.pipe(v.number(), v.finite()),
  thickness: v.pipe(v.number(), v.finite()),
});

/** The maker's own cloths, by name as the language sorts; what cannot be read is left out, and left as it is. */
export function ownCloths(settings: Settings, locale?: string): readonly KeptCloth[] {
  const { compare } = new Intl.Collator(locale);
  return Object.entries(settings)
    .flatMap(([key, value]): KeptCloth[] => {
      const read = key.startsWith(KEY) && typeof value === 'string' ? v.safeParse(shape, parsed(value)) : null;
      return read?.success ? [{ id: key.slice(KEY.length), ...read.output }] : [];
    })
    .sort((one, other) => compare(one.name, other.name));
}

/** Keeps a cloth, new or with other numbers than before; resolves with it once it is on the disk. */
export async function keepCloth({ id = newId(), ...cloth }: Omit<KeptCloth, 'id'> & { readonly id?: string }) {
  const kept = { ...cloth, name: tidyName(cloth.name) };
  await setSetting(KEY + id, JSON.stringify(kept));
  return { id, ...kept };
}

/** Garments that were ordered of it keep its numbers. */
export const forgetCloth = (id: string): Promise<void> => setSetting(KEY + id, false);

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
