import type { Draft } from '../../app/drafting/draft-types';

/** Felt, fleece and minky ease in a hundredth, no more (drafting: sleeve; common practice, no source). */
const STIFF: readonly string[] = ['felt', 'sweatshirt-fleece', 'polar-fleece', 'minky'];
const MOST_EASED_STIFF = 1.01;
/** Cloth over 2 mm: the neck is sewn in scrap first, wherever a garment fits one. */
const THICK: readonly string[] = ['polar-fleece', 'minky'];

/** What a draft in thick cloth should not ask for, or should have said. */
export function clothUnheeded(draft: Draft): string[] {
  if (!STIFF.includes(draft.order.cloth)) return [];
  const tight = draft.seams.filter((seam) => seam.join === 'eased' && seam.ratio > MOST_EASED_STIFF);
  const said = (code: string) => draft.flags.some((flag) => flag.code === code);
  const unsaid = THICK.includes(draft.order.cloth)
    ? ['thick-cloth', ...(draft.fit.some(({ place }) => place === 'neck') ? ['neck-in-scrap'] : [])]
    : [];
  return [
    ...tight.map((seam) => `seam ${seam.name}: ${draft.order.cloth} eased by ${seam.ratio}`),
    ...unsaid.filter((code) => !said(code)).map((code) => `${draft.order.cloth} without the note ${code}`),
  ];
}
