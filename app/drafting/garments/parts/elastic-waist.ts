import { USUAL_CASING_MM } from '../../../body';
import { flare } from '../../blocks/flare';
import type { Ref } from '../../draft-types';
import type { Waists } from '../../heads/choices';
import { type EdgeIn, sumOf } from '../../rows/names';
import { only, part, partNamed } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { elasticFor } from '../../sizes/fastening';
import { isCutAslant } from './binding';

type Takes<C extends object, R extends Ref> = { readonly choices: C; readonly size: never; readonly edge: EdgeIn<R> };
type Gives = { readonly size: never; readonly edge: EdgesOf<'waist-facing', typeof flare> };

/** Half a waist from the front's middle to the back's; whether it opens behind. */
type Waist<C, R> = { readonly edges: readonly R[]; readonly opens: (choices: C) => boolean };

const ends = [{ piece: 'waist-facing', edge: 'side' }] as const;
const isFaced = (choices: Waists) => choices.waist === 'faced';

/** An elastic goes all the way round the waist, in a casing: turned, or of a strip. */
export function elasticWaist<C extends Waists, R extends Ref>({ edges, opens }: Waist<C, R>) {
  return [turned<C, R>(edges), faced({ edges, opens }), elastic] as const;
}

/** The edge of the waist folded down over its elastic. */
const turned = <C extends Waists, R extends Ref>(edges: readonly R[]) =>
  only(
    (choices: C) => !isFaced(choices),
    partNamed<Takes<C, R>, { size: never; edge: never }>({
      seams: [{ name: 'waist-casing', sewn: 2, kind: 'folded', first: edges, second: [] }],
    }),
  );

/** A strip sewn along a waist too curved to be turned, folded inside and stitched down: the casing lies between. */
function faced<C extends Waists, R extends Ref>({ edges, opens }: Waist<C, R>) {
  const long = (look: { readonly length: (edge: string) => number }) => sumOf<string>(edges, look);
  return only(
    isFaced,
    partNamed<Takes<C, R>, Gives>({
      pieces: [
        piece<{ choices: C; size: never; edge: string }>()('waist-facing' as string, flare, {
          copies: 1,
          mirrored: false,
          onFold: true,
          bias: isCutAslant,
          sizes: {
            flareTop: long,
            flareBottom: long,
            // As wide as the casing it makes.
            flareHeight: ({ wearer }) => USUAL_CASING_MM[wearer.scale],
          },
          roles: (choices) => ({
            top: 'seam',
            side: opens(choices) ? 'opening' : 'seam',
            bottom: 'seam',
            centre: 'fold',
          }),
        }),
      ],
      seams: [
        {
          name: 'waist-facing',
          sewn: 2,
          first: edges,
          second: [{ piece: 'waist-facing', edge: 'top' }],
          cornered: true,
        },
        {
          name: 'waist-facing-end',
          sewn: 1,
          first: ends,
          second: ends,
          when: (choices) => !opens(choices),
        },
        { name: 'waist-facing-end', sewn: 2, kind: 'folded', first: ends, second: [], when: opens },
        {
          name: 'waist-facing-inside',
          sewn: 2,
          kind: 'laid',
          first: [{ piece: 'waist-facing', edge: 'top' }],
          second: [{ piece: 'waist-facing', edge: 'bottom', back: true }],
        },
      ],
    }),
  );
}

const elastic = part<{ choices: object; size: never; edge: never }>({
  notions: [{ kind: 'elastic', place: 'waist', length: ({ wearer }) => elasticFor(wearer.of('waist-girth')) }],
});
