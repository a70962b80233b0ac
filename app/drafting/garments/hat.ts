import type { Traits } from '../../body';
import { flare } from '../blocks/flare';
import { earGore, gore } from '../blocks/gore';
import { hatHead } from '../heads/hat';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { piece } from '../rows/piece-row';
import { GORES, hatSizes } from '../sizes/hat';
import { brimPart } from './parts/brim';
import {
  aroundEars,
  brimRole,
  brims,
  closesBelow,
  covers,
  cuffed,
  type HatChoices,
  type HatGives,
  halfBrim,
  halfRound,
  isParted,
  isTurned,
  opens,
} from './parts/hat-edge';

type Names = HatGives & { readonly choices: HatChoices };

const middle = (name: 'gore' | 'gore-front' | 'gore-back') =>
  piece<Names>()(name, gore, {
    copies: name === 'gore' ? GORES : 1,
    mirrored: false,
    onFold: true,
    roles: (choices) => ({ side: 'seam', brim: brimRole(choices), centre: 'fold' }),
    when: name === 'gore' ? covers : opens,
  });

const beside = (name: 'gore-before' | 'gore-behind') =>
  piece<Names>()(name, earGore, {
    copies: 2,
    mirrored: true,
    onFold: false,
    sizes: { earLong: ({ sizes, choices }) => (closesBelow(choices) ? sizes.earLong : null) },
    roles: (choices) => ({ above: 'seam', ear: 'opening', below: 'seam', brim: brimRole(choices), side: 'seam' }),
    ...(name === 'gore-behind' ? { back: true as const } : {}),
    when: opens,
  });

/** A slit shorter than an ear asks for by this much is said, mm. */
const MISSING_MM = 1;
/** And a head so much flatter than any hat. */
const FLAT_MM = 3;

export const hat = assemble(hatHead, [
  part<{ choices: HatChoices; size: never; edge: never }, HatGives>({
    sizes: [hatSizes],
    passages: [{ measure: 'head-girth', through: 'brim', gives: ({ hatRound }) => hatRound }],
    pieces: [
      middle('gore'),
      middle('gore-front'),
      middle('gore-back'),
      beside('gore-before'),
      beside('gore-behind'),
      piece<Names>()('cuff', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          flareTop: halfRound,
          flareBottom: halfRound,
          flareHeight: ({ sizes }) => 2 * sizes.cuffDeep,
        },
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
        when: cuffed,
      }),
    ],
    seams: [
      {
        name: 'gores',
        sewn: 1,
        first: [{ piece: 'gore', edge: 'side', times: GORES }],
        second: [{ piece: 'gore', edge: 'side', times: GORES }],
        cornered: true,
        when: covers,
      },
      {
        name: 'gore-front',
        sewn: 2,
        first: [{ piece: 'gore-before', edge: 'side' }],
        second: [{ piece: 'gore-front', edge: 'side', back: true }],
        cornered: true,
        when: opens,
      },
      {
        name: 'gore-back',
        sewn: 2,
        first: [{ piece: 'gore-behind', edge: 'side' }],
        second: [{ piece: 'gore-back', edge: 'side', back: true }],
        cornered: true,
        when: opens,
      },
      ...(['above', 'below'] as const).map((edge) => ({
        name: `ear-${edge}`,
        sewn: 2 as const,
        first: [{ piece: 'gore-before' as const, edge }],
        second: [{ piece: 'gore-behind' as const, edge }],
        cornered: true as const,
        when: edge === 'above' ? opens : closesBelow,
      })),
      ...(['before', 'behind'] as const).map((side) => ({
        name: `ear-${side}`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece: `gore-${side}` as const, edge: 'ear' as const }],
        second: [],
        when: opens,
      })),
      {
        name: 'hat-hem',
        sewn: 1,
        kind: 'folded',
        after: aroundEars,
        first: brims,
        second: [],
        when: isTurned,
      },
      {
        name: 'hat-cuff-end',
        sewn: 1,
        first: [{ piece: 'cuff', edge: 'side' }],
        second: [{ piece: 'cuff', edge: 'side' }],
        when: cuffed,
      },
      {
        name: 'hat-cuff',
        sewn: 1,
        after: aroundEars,
        first: brims,
        second: [{ piece: 'cuff', edge: 'top', times: 2 }],
        cornered: true,
        when: (choices) => cuffed(choices) && !isParted(choices),
      },
      {
        name: 'hat-cuff',
        sewn: 2,
        after: aroundEars,
        first: halfBrim,
        second: [{ piece: 'cuff', edge: 'top' }],
        cornered: true,
        when: (choices) => cuffed(choices) && isParted(choices),
      },
      {
        name: 'hat-cuff-inside',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'cuff', edge: 'top' }],
        second: [{ piece: 'cuff', edge: 'bottom', back: true }],
        when: cuffed,
      },
    ],
    unsuited: [
      { choice: 'hatEars', from: 'auto', to: 'covered', when: ({ ears }) => ears === 'none' },
      ...(['open', 'down'] as const).map((from) => ({
        choice: 'hatEars' as const,
        from,
        to: 'covered' as const,
        code: 'no-ears',
        when: ({ ears }: Traits) => ears === 'none',
      })),
    ],
    instead: [
      {
        choice: 'hatEars',
        from: 'open',
        to: 'down',
        code: 'ears-down-to-edge',
        because: 'wide-ears',
        check: ['ear-base', 'ear-girth', 'ear-inset'],
        onlyAuto: true,
        when: ({ sizes: { earMissing } }) => earMissing > MISSING_MM,
      },
    ],
    notes: [
      {
        code: 'head-flat',
        measures: ['over-head', 'head-girth'],
        told: ({ sizes: { flatHead } }) => (flatHead > FLAT_MM ? { by: 2 * flatHead } : null),
      },
      {
        code: 'ear-slit-short',
        measures: ['ear-base', 'ear-girth', 'ear-inset'],
        told: ({ sizes: { earMissing, earLong } }) =>
          earMissing > MISSING_MM ? { by: earMissing, slit: earLong } : null,
        when: opens,
      },
    ],
    fit: [{ place: 'brim', measure: 'head-girth', garment: ({ sizes }) => sizes.hatRound }],
  }),
  brimPart,
]);
