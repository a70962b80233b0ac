import type { Way } from '../../measuring';
import { Icon, Picks, useWords } from '../../parts';
import { setSetting } from '../../storage';
import { type Making, screensOf } from '../shared/making/making';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';

const ways: readonly Way[] = ['whole', 'short'];

/** All of it measured, or the few numbers that tell most and the rest guessed, where that saves a step; said with how many each takes. */
export function WayPicks({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const steps = { whole: screensOf(making, 'whole'), short: screensOf(making, 'short') };
  return (
    <div class="way">
      {steps.short < steps.whole && (
        <Picks
          legend={say('screen.way.name')}
          chosen={making.way}
          onPick={(way) => void attempt(() => setSetting('way', way))}
          picks={ways.map((value) => ({
            value,
            words: say(`screen.way.${value}`),
            note: say('screen.way.steps', { count: steps[value] }),
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
