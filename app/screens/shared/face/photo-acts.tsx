import { useRef } from 'preact/hooks';
import { Icon, useWords } from '../../../parts';
import { savePhoto } from '../../../storage';
import { useAttempt } from '../trouble/attempt';
import { redraw } from './redraw';
import { usePhoto } from './toy-face';
import './photo-acts.css';

type PhotoActsProps = {
  /** A toy's id, or a garment's. */
  readonly of: string;
  readonly changedAt: number;
  /** A photo is kept beside its row: touching the row tells every screen that shows it. */
  readonly touch: () => Promise<unknown>;
};

/** A photo in the place of the figure: taken or chosen, and taken away again. */
export function PhotoActs({ of, changedAt, touch }: PhotoActsProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const file = useRef<HTMLInputElement>(null);
  const photo = usePhoto(of, changedAt);
  const keep = (picture: File | null) =>
    attempt(async () => {
      await savePhoto(of, picture && (await redraw(picture)));
      await touch();
    });
  return (
    <div class="photo-acts">
      <input
        ref={file}
        class="unseen"
        type="file"
        accept="image/*"
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          const [picture] = event.currentTarget.files ?? [];
          if (picture) void keep(picture);
          event.currentTarget.value = '';
        }}
      />
      <button type="button" class="plain" onClick={() => file.current?.click()}>
        <Icon name="photo" />
        {say(photo ? 'screen.photo.another' : 'screen.photo.add')}
      </button>
      {photo && (
        <button type="button" class="quiet" onClick={() => keep(null)}>
          {say('screen.photo.remove')}
        </button>
      )}
      <p class="soft small">{say('screen.photo.what')}</p>
    </div>
  );
}
