import { hemChoice, pocketChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs, quietly } from './head';

/** An apron with a bib: one piece, straps that close behind the neck and behind the waist. */
export const apronHead = head({
  id: 'apron',
  bodies: ['upright'],
  level: 'first',
  looks: [],
  choices: { pocket: pocketChoice, ...dressedChoices, hem: hemChoice },
  auto: dressedAuto,
  suits: dressedSuits(() => true),
  needs: [
    ...needs(['neck-girth', 'waist-girth', 'bodice-height', 'waist-to-hem']),
    // How far a strap goes up to the neck.
    ...quietly(['armhole-depth']),
    ...needs(['paw-girth'], ({ pocket }: { readonly pocket: boolean }) => pocket),
  ],
});
