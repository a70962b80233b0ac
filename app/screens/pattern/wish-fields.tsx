import { useWords } from '../../parts';
import { type Making, wishesOf } from '../shared/making/making';
import { WishInputs } from '../shared/making/wish-inputs';

/** The lengths a maker chooses, to be changed while the pieces are in sight. */
export function WishFields({ making }: { readonly making: Making }) {
  const { say } = useWords();
  if (wishesOf(making.steps).length === 0) return null;
  return (
    <details class="folded-fields">
      <summary>{say('screen.pattern.wishes')}</summary>
      <WishInputs making={making} />
    </details>
  );
}
