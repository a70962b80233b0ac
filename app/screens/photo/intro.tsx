import { useRef } from 'preact/hooks';
import type { MeasureId } from '../../body';
import { Icon, Page, useWords } from '../../parts';
import type { Toy } from '../../storage';
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
        <ol class="photo-how">
          <li>{say('photo.lay-card')}</li>
          <li>{say('photo.hold')}</li>
          <li>{say('photo.mark')}</li>
        </ol>
        <p class="photo-mind">{say('photo.bulge')}</p>
        <p class="soft small">{say('photo.private')}</p>
      </div>
    </Page>
  );
}

type PictureButtonProps = {
  readonly kind: 'go' | 'plain';
  readonly words: string;
  readonly camera?: boolean;
  readonly onFile: (file: File) => void;
};

function PictureButton({ kind, words, camera = false, onFile }: PictureButtonProps) {
  const file = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={file}
        class="unseen"
        type="file"
        accept="image/*"
        {...(camera ? { capture: 'environment' as const } : {})}
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          const [picture] = event.currentTarget.files ?? [];
          if (picture) onFile(picture);
          event.currentTarget.value = '';
        }}
      />
      <button type="button" class={kind} onClick={() => file.current?.click()}>
        {camera && <Icon name="photo" />}
        {words}
      </button>
    </>
  );
}
