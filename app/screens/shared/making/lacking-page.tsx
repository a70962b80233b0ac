import { Page, useWords } from '../../../parts';
import { to } from '../route';
import type { Lacking } from './lacking';
import type { Making } from './making';
import { makingWords } from './outfit';

/** In the place of a pattern that cannot be drawn yet: which number comes first, and why. */
export function LackingPage({ making, lacking }: { readonly making: Making; readonly lacking: Lacking }) {
  const { say } = useWords();
  const { toy, garment } = making;
  const name = say(`measure.${lacking.measure}.name`);
  return (
    <Page
      title={say('screen.lacking.title')}
      back={to('toy', toy.id, garment.id, 'review')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={makingWords(say, making)}
      acts={
        <a class="go" href={`${to('toy', toy.id, garment.id, 'measure', lacking.measure)}?then=review`}>
          {say('screen.lacking.measure', { name })}
        </a>
      }
    >
      <p>{say(`screen.lacking.${lacking.why}`, { name })}</p>
    </Page>
  );
}
