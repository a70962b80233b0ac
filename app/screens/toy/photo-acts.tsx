import { useRef } from 'preact/hooks';
import { Icon, useWords } from '../../parts';
import { changeToy, savePhoto, type Toy } from '../../storage';
import { redraw } from '../shared/face/redraw';
import { usePhoto } from '../shared/face/toy-face';
import { useAttempt } from '../shared/trouble/attempt';

/** A photo in the place of the figure: taken or chosen, and taken away again. */
export function PhotoActs({ toy }: { readonly toy: Toy }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const file = useRef<HTMLInputElement>(null);
  const photo = usePhoto(toy.id, toy.changedAt);
  const keep = (picture: File | null) =>
    attempt(async () => {
      await savePhoto(toy.id, picture && (await redraw(picture)));
      // A photo is kept beside its toy: touching the toy tells every screen that shows it.
      await changeToy(toy.id, {});
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
