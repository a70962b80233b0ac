import type { Draft } from '../../../app/drafting/draft-types';
import type { Chosen } from '../../measured/made';
import type { Fault } from './index';

type Choices = Draft['order']['choices'];

/**
 * What today's drafts do wrong when glued, and where it is seen. Each row goes when it is mended: the test that drafts
 * its example fails as soon as the fault no longer occurs there. The list may only shrink; empty, this file goes too.
 */
export type ToMend = {
  readonly code: string;
  readonly where: string;
  readonly when?: (choices: Choices) => boolean;
  readonly example: Example;
};

/** A build in a garment, or a random toy in random choices. */
export type Example =
  | { readonly garment: string; readonly build: string; readonly choices: Chosen }
  | { readonly garment: string; readonly seed: number };

const isOpen = ({ opening }: Choices) => opening !== 'none';
const on = (garment: string, choices: Chosen, build = 'doll') => ({ garment, build, choices });
const raw = (where: string, example: Example): ToMend => ({ code: 'raw', where, example });

/** A standing collar joined into a ring, on a neck that opens. */
const ringed = (where: string): ToMend => ({
  code: 'openings',
  where,
  when: (choices) => choices.neck === 'band' && isOpen(choices),
  example: on(where, { neck: 'band', opening: 'back' }),
});

export const toMend: readonly ToMend[] = [
  ...['tee', 'tank', 'nightshirt', 'dress'].map(ringed),
  // Nothing is left open to turn it through.
  { code: 'openings', where: 'bib', example: on('bib', {}) },
  {
    code: 'openings',
    where: 'tank',
    when: ({ neck, hem }) => neck === 'lined' && hem === 'turned',
    example: on('tank', { neck: 'lined' }),
  },
  // One half turned 12 mm at the side, the other 6 because it curves.
  {
    code: 'turned-unequally',
    where: 'back.hem+front.hem',
    example: { garment: 'tee', seed: 6 },
  },
  // Second edges of strips that are folded over: nothing says that they are stitched down.
  raw('binding.bottom', on('tee', { neck: 'bound' })),
  raw('armhole-binding.bottom', on('tank', { neck: 'bound' })),
  raw('top-binding.bottom', on('dress', { bodice: 'band' })),
  raw('cuff-band.bottom', on('tee', { sleeve: 'puffed' })),
  // Ends of strips.
  raw('binding.side', on('tee', { neck: 'bound', opening: 'back' })),
  raw('top-binding.side', on('dress', { bodice: 'band', opening: 'back' })),
  raw('back-casing.side', on('dress', { bodice: 'half-circle' })),
  raw('strap.side', on('dress', { bodice: 'band' })),
  raw('strap.centre', on('dress', { bodice: 'band' })),
  raw('strap.bottom', on('dress', { bodice: 'band', straps: 'neck' })),
  // Stubs beside an opening.
  raw('front.neck-end', on('hooded-top', { opening: 'front' })),
  raw('back.neck-end', on('hooded-top', { opening: 'back' })),
  raw('front.hem-end', on('tee', { opening: 'front' })),
  raw('back.hem-end', on('tee', { opening: 'back' })),
  raw('back-lining.hem-end', on('dress', { bodice: 'band', lining: true, opening: 'back' })),
  // Openings themselves.
  raw('hood.opening', on('hooded-top', { opening: 'back' })),
  raw('skirt-back.opening', on('skirt', {})),
  raw('slit-facing.top', on('tee', { opening: 'slit' })),
  raw('front-facing.centre', on('tee', { neck: 'faced', opening: 'front' })),
  raw('back-facing.centre', on('tee', { neck: 'faced', opening: 'back' })),
];

export function isKnown(fault: Fault, { order }: Draft): boolean {
  return toMend.some(
    ({ code, where, when }) => code === fault.code && where === fault.where && (when?.(order.choices) ?? true),
  );
}
