import type { Flag, Known, Knowns, MeasureId, Mm } from '../../../body';
import { believedOf } from '../making/believed';
import type { Making } from '../making/making';

/** One side of a doubt's picture: the toy by these numbers, and the lengths that make the difference. */
export type Side = {
  readonly numbers: Knowns;
  readonly lengths: readonly { readonly measure: MeasureId; readonly mm: Mm }[];
};

/**
 * A doubt as a picture. `likely` is what was all but surely meant, or what the rest lets one expect (`sure` tells), or the
 * second of two readings; null where the rest says nothing of it.
 */
export type Doubted = {
  readonly measure: MeasureId;
  readonly kind: 'one' | 'swapped' | 'readings';
  readonly typed: Side;
  readonly likely: Side | null;
  readonly sure: boolean;
};

/** What a doubt is about; null where the number is no length that a toy could be drawn by. */
export function doubtedOf(making: Making, flag: Flag): Doubted | null {
  const { body, toy, readings, flags, taught } = making;
  const { first: one, second: two, offer, otherOffer, expected } = flag.values;
  const [measure, other] = flag.measures;
  const typed = measure && body.sizes[measure]?.value;
  if (!measure || !typed || !(typed > 0)) return null;
  const rest = believedOf({ toy, readings }, [flag, ...flags], taught) ?? body;
  const side = (...lengths: Side['lengths']): Side => ({ numbers: withLengths(rest.sizes, lengths), lengths });

  if (flag.code === 'readings-apart' && one !== undefined && two !== undefined)
    return {
      ...{ measure, kind: 'readings', sure: false },
      typed: side({ measure, mm: one }),
      likely: side({ measure, mm: two }),
    };
  if (other && offer !== undefined && otherOffer !== undefined)
    return {
      ...{ measure, kind: 'swapped', sure: true },
      typed: side({ measure, mm: typed }, { measure: other, mm: body.sizes[other]?.value ?? offer }),
      likely: side({ measure, mm: offer }, { measure: other, mm: otherOffer }),
    };
  const usual = offer ?? expected ?? rest.sizes[measure]?.value;
  return {
    ...{ measure, kind: 'one', sure: offer !== undefined },
    typed: side({ measure, mm: typed }),
    likely: usual === undefined ? null : side({ measure, mm: usual }),
  };
}

/** All numbers as firm as if they were taken, so that no picture leans on one more than on another; these in their places. */
function withLengths(sizes: Knowns, lengths: Side['lengths']): Knowns {
  const firm = (value: Mm): Known => ({ value, from: 'tape', give: 0 });
  return Object.fromEntries([
    ...Object.entries(sizes).map(([id, { value }]) => [id, firm(value)]),
    ...lengths.map(({ measure, mm }) => [measure, firm(mm)]),
  ]);
}
