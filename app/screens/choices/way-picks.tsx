import type { Way } from '../../measuring';
import { Icon, Picks, useWords } from '../../parts';
import { setSetting } from '../../storage';
import type { Making } from '../shared/making/making';
import { askedWords, numbersLeft } from '../shared/making/numbers-left';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';

const ways: readonly Way[] = ['whole', 'short'];

/** All of it measured, or the few numbers that tell most and the rest guessed, where that saves a number; said with how many each still takes. */
export function WayPicks({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const leftOn = (way: Way) => numbersLeft(making.row, making.toy, making.body, { order: making.garment.order, way });
  return (
    <div class="way">
      {leftOn('short').count < leftOn('whole').count && (
        <Picks
          legend={say('screen.way.name')}
          chosen={making.way}
          onPick={(way) => void attempt(() => setSetting('way', way))}
          picks={ways.map((value) => ({
            value,
            words: say(`screen.way.${value}`),
            note: askedWords(say, leftOn(value)),
          }))}
        />
      )}
      <a class="quiet" href={to('toy', making.toy.id, making.garment.id, 'steps')}>
        <Icon name="pencil" />
        {say('screen.way.paper')}
      </a>
    </div>
  );
}
