import { legTube } from '../../blocks/leg-tube';
import type { Look } from '../../rows/names';
import { piece } from '../../rows/piece-row';
import type { SeamRow } from '../../rows/rows';
import { PAST_CENTRE_MM } from '../../sizes/scale';
import { isTube, type PantsChoices, type PantsNames } from './pants-names';

const lets = (tail: 'open' | 'waist') => (choices: PantsChoices) => isTube(choices) && choices.tail === tail;
export const tubeSlits = lets('open');
/** From the waist down to the tail the back opens, and closes above it by edges that lap. */
export const tubeLaps = lets('waist');
export const tubeTailed = (choices: PantsChoices) => tubeSlits(choices) || tubeLaps(choices);

/** Half the waist, from front to back. */
export const tubeWaist = [{ piece: 'pants-tube', edge: 'waist' }] as const;

const ofTail = (size: 'tailAbove' | 'tailLong') => (look: Look<PantsNames>) =>
  tubeTailed(look.choices) ? look.sizes[size] : null;

/** Half a short tube round legs that are sewn together: its back rises over the seat, its middle seams look like the gap between two legs. */
export const pantsTube = piece<PantsNames>()('pants-tube', legTube, {
  copies: 2,
  mirrored: true,
  onFold: false,
  sizes: {
    tailAbove: ofTail('tailAbove'),
    tailLong: ofTail('tailLong'),
    tailLap: ({ wearer, choices }: Look<PantsNames>) => (tubeLaps(choices) ? PAST_CENTRE_MM[wearer.scale] : null),
  },
  roles: ({ waist }) => ({
    waist: waist === 'faced' ? 'seam' : 'casing',
    'tail-closure': 'closure',
    'tail-end': 'opening',
    tail: 'opening',
    hem: 'casing',
  }),
  when: isTube,
});

const middle = (name: string, edge: 'front-crotch' | 'back-crotch' | 'back-above', when: typeof isTube) => {
  const own = [{ piece: 'pants-tube', edge }] as const;
  return { name, sewn: 1 as const, first: own, second: own, when };
};

export const pantsTubeSeams: readonly SeamRow<PantsNames>[] = [
  middle('crotch-front', 'front-crotch', isTube),
  { ...middle('crotch-above', 'back-above', isTube), when: tubeSlits },
  middle('crotch-back', 'back-crotch', isTube),
  {
    name: 'tail-closure',
    sewn: 2,
    kind: 'folded',
    first: [{ piece: 'pants-tube', edge: 'tail-closure' }],
    second: [],
    when: tubeLaps,
  },
  {
    name: 'tail',
    sewn: 2,
    kind: 'folded',
    first: (choices) => [
      ...(tubeLaps(choices) ? [{ piece: 'pants-tube', edge: 'tail-end' } as const] : []),
      { piece: 'pants-tube', edge: 'tail' },
    ],
    second: [],
    when: tubeTailed,
  },
  {
    name: 'pants-hem',
    sewn: 2,
    kind: 'folded',
    first: [{ piece: 'pants-tube', edge: 'hem' }],
    second: [],
    when: isTube,
  },
];
