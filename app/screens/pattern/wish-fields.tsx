import { useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import { type Making, wishesOf } from '../shared/making/making';
import { WishInputs } from '../shared/making/wish-inputs';

/** The lengths a maker chooses, to be changed while the pieces are in sight. */
export function WishFields({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const wishes = wishesOf(making.steps);
  if (wishes.length === 0) return null;
  return (
    <Folded title={say('screen.pattern.wishes')} stands={say('screen.pattern.wishes-stands', { count: wishes.length })}>
      <WishInputs making={making} />
    </Folded>
  );
}
