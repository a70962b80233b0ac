import type { MeasureId } from '../../body';
import { Page, useWords } from '../../parts';
import type { Toy } from '../../storage';
import { How } from '../shared/photo/how';
import { PictureButton } from '../shared/photo/picture-button';
import { to } from '../shared/route';
import { IntroPicture } from './intro-picture';
import './intro.css';

type IntroProps = {
  readonly measure: MeasureId;
  readonly toy: Toy;
  readonly back: string;
  readonly onFile: (file: File) => void;
};

/** How the photo is to be taken, and what it cannot tell; then the camera, or a photo there is. */
export function Intro({ measure, toy, back, onFile }: IntroProps) {
  const { say } = useWords();
  return (
    <Page
      title={say('photo.title')}
      back={back}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`measure.${measure}.name`)}
      acts={
        <>
          <PictureButton kind="plain" words={say('photo.pick')} onFile={onFile} />
          <PictureButton kind="go" words={say('photo.take')} camera onFile={onFile} />
        </>
      }
    >
      <div class="photo-intro">
        <IntroPicture />
        <How steps={[say('photo.lay-card'), say('photo.hold'), say('photo.mark')]} />
        <p class="photo-mind">{say('photo.bulge')}</p>
        <p class="soft small">{say('photo.private')}</p>
      </div>
    </Page>
  );
}
