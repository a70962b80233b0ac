import { useEffect, useMemo, useState } from 'preact/hooks';
import { type MeasureId, takingOf } from '../../body';
import { diagram, SNUG, WIDE } from '../../measuring';
import { DiagramPicture, useWords } from '../../parts';
import type { Making } from '../shared/making/making';
import { SpeakAct } from '../shared/speak-act';
import { PhotoLink } from './photo-link';

/** A phone on its side: the figure stands beside the number, in a box about as high as wide. */
const BESIDE = '(min-width: 34rem) and (max-height: 39.9rem) and (orientation: landscape)';

/** The figure with the tape on it, and the button that reads the step aloud. */
export function StepFigure({ making, measure }: { readonly making: Making; readonly measure: MeasureId }) {
  const { say } = useWords();
  const { kind, traits, sizes } = making.body;
  const step = making.steps.find((each) => each.measure === measure);
  const { how, mind } = takingOf(kind, measure);
  const frame = useMatches(BESIDE) ? SNUG : WIDE;
  const drawn = useMemo(() => diagram(kind, traits, sizes, measure, frame), [kind, traits, sizes, measure, frame]);
  return (
    <section class="step-figure" aria-labelledby="step-name">
      {drawn && <DiagramPicture diagram={drawn} say={say} />}
      {step?.turn && <p class="step-turn">{say(`screen.step.turn.${step.view}`)}</p>}
      <PhotoLink making={making} measure={measure} />
      <SpeakAct
        text={say('list.named', {
          name: say(`measure.${measure}.name`),
          what: say('list.after', { one: say(how), two: say(mind) }),
        })}
      />
    </section>
  );
}

function useMatches(query: string): boolean {
  const [matches, setMatches] = useState(() => matchMedia(query).matches);
  useEffect(() => {
    const media = matchMedia(query);
    const follow = () => setMatches(media.matches);
    media.addEventListener('change', follow);
    return () => media.removeEventListener('change', follow);
  }, [query]);
  return matches;
}
