import { useState } from 'preact/hooks';
import type { SeenOutline } from '../../measuring/photo';
import { Page, useWords } from '../../parts';
import { How } from '../shared/photo/how';
import { openPicture } from '../shared/photo/open-picture';
import { PictureButton } from '../shared/photo/picture-button';
import type { Heads } from '../shared/photo/sight';
import { useAttempt } from '../shared/trouble/attempt';
import { ScrapSight } from './scrap-sight';

type ScrapPhotoProps = Heads & { readonly onUse: (outline: SeenOutline) => void };

/** A scrap's outline tapped on a photo of it. The photo lives in this screen's memory only, and is gone with it. */
export function ScrapPhoto(props: ScrapPhotoProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const [picture, setPicture] = useState<HTMLCanvasElement | null>(null);
  const { back, whose, detail } = props;
  const open = (file: File) => attempt(async () => setPicture(await openPicture(file)));
  if (picture) return <ScrapSight {...props} picture={picture} onOther={() => setPicture(null)} />;
  return (
    <Page
      title={say('photo.scrap-title')}
      back={back}
      whose={whose}
      detail={detail}
      acts={
        <>
          <PictureButton kind="plain" words={say('photo.pick')} onFile={open} />
          <PictureButton kind="go" words={say('photo.take')} camera onFile={open} />
        </>
      }
    >
      <How steps={[say('photo.scrap-lay'), say('photo.hold'), say('photo.scrap-mark')]} />
      <p class="soft small">{say('photo.private')}</p>
    </Page>
  );
}
