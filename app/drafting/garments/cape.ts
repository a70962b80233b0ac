import type { BodyKind } from '../../body';
import { capeHalf } from '../blocks/cape';
import { capeHead } from '../heads/cape';
import type { Hems, Hoods } from '../heads/choices';
import { assemble } from '../rows/garment';
import { type Both, type Look, type RefTo, sumOf } from '../rows/names';
import { only, part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { capeSizes, OVER_ARMS_EASE_MM } from '../sizes/cape';
import { CLOTH_WIDE_MM, sectorReach } from '../sizes/fullness';
import type { SizesOf } from '../sizes/maker';
import { CAPE_PAST_MM } from '../sizes/scale';
import { bindingPart } from './parts/binding';
import { earsPart } from './parts/ears';
import { fastenedPart } from './parts/fastened';
import { hemRole } from './parts/hem';
import { hoodPart } from './parts/hood';
import { leavesChin } from './parts/hood-match';
import { scrapNeck } from './parts/thick';

type Gives = { readonly size: SizesOf<typeof capeSizes>; readonly edge: EdgesOf<'cape', typeof capeHalf> };
type Takes = { readonly choices: Hems & Hoods; readonly size: 'chinGap'; readonly edge: never };
type Names = Both<Takes, Gives>;

const hooded = ({ hood }: Hoods) => hood !== 'none';
const bare = (choices: Hoods) => !hooded(choices);
const capeHem = [
  { piece: 'cape', edge: 'bottom-end' },
  { piece: 'cape', edge: 'bottom' },
] as const;
/** From centre front to centre back: the fold is at the back. */
const before = (): RefTo<'cape.neck-front'>[] => [{ piece: 'cape', edge: 'neck-front', back: true }];
const behind = (): RefTo<'cape.neck-back'>[] => [{ piece: 'cape', edge: 'neck-back', back: true }];
type CapeNeck = 'cape.neck-front' | 'cape.neck-back' | 'cape.chin';
const neckline = () => [...before(), ...behind()];
const chin = (): RefTo<'cape.chin'>[] => [{ piece: 'cape', edge: 'chin' }];
/** What a hood leaves free of half the neck; null without one. */
const free = ({ choices, sizes }: Pick<Look<Names>, 'choices' | 'sizes'>) =>
  hooded(choices) && leavesChin(choices) ? sizes.chinGap : null;
const halfNeck = (look: Look<Names>) => sumOf([...neckline(), ...(free(look) === null ? [] : chin())], look);

/** The same to the very edge of the front: where a binding ends. */
const wholeNeckline = (): RefTo<CapeNeck | 'cape.top-end'>[] => [
  { piece: 'cape', edge: 'top-end', back: true },
  ...neckline(),
];

const capePart = part<Takes, Gives>({
  sizes: [capeSizes],
  pieces: [
    piece<Names>()('cape', capeHalf, {
      copies: 1,
      mirrored: false,
      onFold: true,
      sizes: {
        flareTop: 'capeNeck',
        flareBottom: 'capeHem',
        flareHeight: 'capeFront',
        capeBack: 'capeLength',
        chinGap: free,
        capePast: ({ wearer }) => CAPE_PAST_MM[wearer.scale],
      },
      roles: (choices) => ({
        'neck-back': 'seam',
        'neck-front': 'seam',
        chin: 'neckline',
        'top-end': 'neckline',
        side: 'hem',
        'bottom-end': hemRole(choices),
        bottom: hemRole(choices),
        centre: 'fold',
      }),
      back: true,
    }),
  ],
  seams: [
    {
      name: 'cape-front',
      sewn: 2,
      kind: 'folded',
      // Under a hood, which ends at the centre line, the top of the lap is turned with the front.
      first: (choices) => [
        ...(hooded(choices) ? [{ piece: 'cape', edge: 'top-end' } as const] : []),
        { piece: 'cape', edge: 'side' },
      ],
      second: [],
    },
    { name: 'cape-hem', sewn: 2, kind: 'folded', first: capeHem, second: [] },
  ],
  // Round toys have no face that a hood goes round.
  unsuited: (['auto', 'two', 'three'] as const).map((from) => ({
    choice: 'hood' as const,
    from,
    to: 'none' as const,
    code: 'hood-left-out',
    when: (_: object, __: object, kind: BodyKind) => kind === 'round',
  })),
  notes: [
    scrapNeck,
    {
      code: 'wider-than-cloth',
      measures: ['cape-length'],
      told: ({ sizes: { capeNeck, capeHem, capeFront } }) => {
        const width = 2 * sectorReach(capeNeck, capeHem, capeFront);
        return width > CLOTH_WIDE_MM ? { width, cloth: CLOTH_WIDE_MM } : null;
      },
    },
  ],
  fit: [
    { place: 'neck', measure: 'neck-girth', garment: (look) => 2 * halfNeck(look) },
    ...(
      [
        ['over-arms', 'upright', 'over-arms-girth'],
        ['tummy', 'round', 'body-girth'],
      ] as const
    ).map(([place, kind, measure]) => ({
      place,
      bodies: [kind],
      measure,
      garment: (look: Look<Names>) => 2 * look.length('cape.bottom'),
      asked: ({ wearer }: Pick<Look<Names>, 'wearer'>) => wearer.of(measure) + OVER_ARMS_EASE_MM,
      because: () => 'flare',
    })),
  ],
  // A square of it at the neck.
  notions: [{ kind: 'closure', place: 'cape-front', length: () => 0 }],
});

export const cape = assemble(capeHead, [
  fastenedPart,
  capePart,
  only(hooded, hoodPart<Hoods, RefTo<CapeNeck>>({ front: before, back: behind, chin, opensBehind: () => false })),
  only(hooded, earsPart),
  only(
    bare,
    bindingPart('binding', { edge: wholeNeckline, closed: () => false, ends: () => 'front', hollow: () => true }),
  ),
]);
