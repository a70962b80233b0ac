import { useId, useState } from 'preact/hooks';
import { NOTE_CHARACTERS } from '../../body';
import { useWords } from '../../parts';
import { changeGarment, type Garment } from '../../storage';
import { useAttempt } from '../shared/trouble/attempt';

/** What fitted and what did not, in her own words: kept as it is typed. */
export function NoteField({ garment }: { readonly garment: Garment }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const id = useId();
  const [text, setText] = useState(garment.note ?? '');
  const type = (typed: string) => {
    setText(typed);
    void attempt(() => changeGarment(garment.id, { note: typed.trim() === '' ? null : typed }));
  };
  return (
    <div class="kept-note">
      <label for={id}>{say('screen.kept.note')}</label>
      <textarea
        id={id}
        rows={3}
        maxLength={NOTE_CHARACTERS}
        placeholder={say('screen.kept.note-like')}
        value={text}
        onInput={(event) => type(event.currentTarget.value)}
      />
    </div>
  );
}
