import { useState } from 'preact/hooks';
import { Picks, useWords } from '../../parts';
import { changeToy, type Player, players, type Toy } from '../../storage';
import { CareList } from '../shared/care/care';
import { Folded } from '../shared/folded/folded';
import { useAttempt } from '../shared/trouble/attempt';

type CarePicksProps = { readonly toy: Toy; readonly onPlayer: (player: Player) => void };

/** Whose hands the toy is for, and what that asks of closures and ties before anything is chosen. */
export function CarePicks({ toy, onPlayer }: CarePicksProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const { plays } = toy;
  const [unsaid] = useState(plays === undefined);
  return (
    <Folded
      title={say('screen.care.title')}
      stands={say(plays ? `screen.care.plays-${plays}` : 'screen.care.plays-unknown')}
      open={unsaid}
    >
      <div class="theme care">
        <Picks
          legend={say('screen.care.plays')}
          chosen={plays ?? ''}
          onPick={(value) => {
            const player = players.find((each) => each === value);
            if (!player) return;
            void attempt(async () => void (await changeToy(toy.id, { plays: player })));
            onPlayer(player);
          }}
          picks={players.map((value) => ({ value, words: say(`screen.care.plays-${value}`) }))}
        />
        <CareList toy={toy} choosing />
      </div>
    </Folded>
  );
}
