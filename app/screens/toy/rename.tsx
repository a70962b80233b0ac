import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { useWords } from '../../parts';
import { changeToy, type Toy } from '../../storage';
import { NameInput } from '../shared/name-input';
import { useAttempt } from '../shared/trouble/attempt';

/** Another name for a toy. */
export function Rename({ toy, onDone }: { readonly toy: Toy; readonly onDone: () => void }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [name, setName] = useState(toy.name);
  const [wrong, setWrong] = useState(false);
  useEffect(() => field.current?.focus(), []);
  const keep = async () => {
    if (name.trim() === '') return setWrong(true);
    if (await attempt(async () => void (await changeToy(toy.id, { name })))) onDone();
  };
  return (
    <form
      class="rename"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <label for={id}>{say('screen.name.label')}</label>
      <NameInput
        field={field}
        id={id}
        value={name}
        longest={80}
        wrong={wrong}
        onName={(typed) => {
          setName(typed);
          setWrong(false);
        }}
      />
      <p id={`${id}-wrong`} class="wrong-words" role="alert">
        {wrong && say('screen.name.empty')}
      </p>
      <div class="slip-acts">
        <button type="submit" class="plain">
          {say('screen.toy.keep-name')}
        </button>
        <button type="button" class="quiet" onClick={onDone}>
          {say('screen.cancel')}
        </button>
      </div>
    </form>
  );
}
