import { useEffect, useId, useState } from 'preact/hooks';
import { useWords, WayPage } from '../../parts';
import { freeName, listToys, saveToy, tidyName } from '../../storage';
import { kindsDressed, loadGarments } from '../shared/making/garments-known';
import { go, to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import { noteHappening } from '../shared/trouble/happened';
import './new-toy.css';

const STEPS = 3;

/** Whose clothes? The toy is kept as soon as it has a name. */
export function NameScreen() {
  const { say } = useWords();
  const attempt = useAttempt();
  const id = useId();
  const [name, setName] = useState('');
  const [wrong, setWrong] = useState(false);
  const taken = useNames();
  const free = freeName(tidyName(name), taken);
  const keep = () => {
    if (free === '') return setWrong(true);
    void attempt(async () => {
      const kinds = kindsDressed(await loadGarments());
      const toy = await saveToy({ name: free, kind: kinds[0] ?? 'upright' });
      go(to('toy', toy.id, kinds.length > 1 ? 'kind' : 'looks'), 'replace');
    });
  };
  return (
    <WayPage
      title={say('screen.name.title')}
      back={to()}
      whose={say('screen.new-toy')}
      progress={{ done: 1, all: STEPS }}
      acts={
        <button type="submit" form={`${id}-form`} class="go">
          {say('screen.next')}
        </button>
      }
    >
      <p class="soft">{say('screen.name.what')}</p>
      <form
        id={`${id}-form`}
        class="name-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <label for={id}>{say('screen.name.label')}</label>
        <input
          id={id}
          class="name-field"
          value={name}
          maxLength={80}
          autoComplete="off"
          enterKeyHint="next"
          aria-invalid={wrong}
          aria-describedby={`${id}-wrong`}
          onInput={(event) => {
            setName(event.currentTarget.value);
            setWrong(false);
          }}
        />
        <p id={`${id}-wrong`} class="wrong-words" role="alert">
          {wrong && say('screen.name.empty')}
        </p>
        <p role="status" class="soft">
          {free !== tidyName(name) && say('screen.name.same', { name: tidyName(name), free })}
        </p>
      </form>
    </WayPage>
  );
}

/** The names that other toys have. */
function useNames(): ReadonlySet<string> {
  const [names, setNames] = useState<ReadonlySet<string>>(new Set());
  useEffect(() => {
    listToys().then((toys) => setNames(new Set(toys.map((toy) => toy.name))), noteHappening);
  }, []);
  return names;
}
