import { Page, useWords } from '../../parts';
import { DressedPanel } from '../shared/dressed/dressed-panel';
import { bodyShown } from '../shared/making/body-of';
import { lackingOf } from '../shared/making/lacking';
import { type Making, onwardOf } from '../shared/making/making';
import { idsOf, makingWords } from '../shared/making/outfit';
import { draftOf } from '../shared/making/use-draft';
import { useWholeDraft } from '../shared/making/use-whole-draft';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { troubleWords } from '../shared/trouble/attempt';
import './outfit.css';

/** Several garments of one toy at once: all the numbers they need, each taken once, then one lot of paper for them. */
export function OutfitScreen({ params }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => <OutfitPage making={making} />}
    </WithMaking>
  );
}

function OutfitPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, also, steps, readings } = making;
  const drawn = useWholeDraft(making);
  usePlace(toy.id, garment.id, 'outfit');
  const here = (...parts: readonly string[]) => to('toy', toy.id, garment.id, ...parts);
  const left = steps.filter(({ measure }) => !readings[measure]).length;
  const lacking = lackingOf(making) !== null;
  const words = makingWords(say, making);
  const orders = [garment, ...also.map((each) => each.garment)].map(({ order }) => order);
  return (
    <Page
      wide
      title={say('screen.outfit.whose', { name: toy.name })}
      back={to('toy', toy.id, 'outfit')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={words}
      acts={
        <>
          {left > 0 && (
            <a class={lacking ? 'go' : 'plain'} href={here(...onwardOf(making))}>
              {say('screen.outfit.measure')}
            </a>
          )}
          {!lacking && drawn.is === 'drawn' && (
            <a class="go" href={here('print')}>
              {say('screen.pattern.print')}
            </a>
          )}
        </>
      }
    >
      <div class="columns">
        <div class="column">
          <DressedPanel
            body={bodyShown(making.body)}
            draft={draftOf(drawn)}
            busy={drawn.is === 'drawing'}
            text={say('screen.making.whose', { name: toy.name, garment: words })}
          />
        </div>
        <div class="column">
          <p>{say('screen.outfit.numbers', { count: steps.length })}</p>
          <p>{left > 0 ? say('screen.outfit.left', { count: left }) : say('screen.garments.no-more')}</p>
          <div role="status">
            {drawn.is === 'failed' && <p class="slip warn">{troubleWords(say, drawn.code)}</p>}
            {drawn.is === 'refused' && <p>{say('screen.outfit.refused')}</p>}
          </div>
          <ul class="outfit-links">
            {!lacking && (
              <li>
                <a href={here('cloth')}>{say('screen.pattern.cloth')}</a>
              </li>
            )}
            {idsOf(garment.id, true).map((id, index) => (
              <li key={id}>
                <a href={to('toy', toy.id, id, 'pattern')}>
                  {say('screen.outfit.pattern', { name: say(`garment.${orders[index]?.garment}.name`) })}
                </a>
              </li>
            ))}
          </ul>
        </div>
      </div>
    </Page>
  );
}
