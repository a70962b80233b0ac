import { useRef } from 'preact/hooks';
import { Icon, useWords } from '../../parts';
import { bring } from '../shared/arrivals';
import { to } from '../shared/route';
import { useNotice } from '../shared/trouble/notice';

/** The ways in that the maker starts herself. Links, dropped and shared things come by themselves. */
export function BringActs() {
  const { say } = useWords();
  const notice = useNotice();
  const file = useRef<HTMLInputElement>(null);
  const paste = async () => {
    try {
      bring(await clipboard());
    } catch {
      notice({ words: say('screen.card.paste-refused') });
    }
  };
  return (
    <>
      <p>{say('screen.card.what')}</p>
      <input
        ref={file}
        class="unseen"
        type="file"
        accept="image/*,.json,application/json"
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = '';
          if (files.length > 0) bring(files);
        }}
      />
      <div class="bring-acts">
        <a class="go" href={to('card', 'scan')}>
          <Icon name="photo" />
          {say('screen.card.scan')}
        </a>
        <button type="button" class="plain" onClick={() => file.current?.click()}>
          {say('screen.card.choose')}
        </button>
        {'clipboard' in navigator && (
          <button type="button" class="plain" onClick={paste}>
            {say('screen.card.paste')}
          </button>
        )}
      </div>
      <p class="soft small">{say('screen.card.drop')}</p>
    </>
  );
}

/** A copied picture, or else copied text. Throws where the browser does not let the page look. */
async function clipboard(): Promise<(Blob | string)[]> {
  if (typeof navigator.clipboard.read === 'function') {
    for (const item of await navigator.clipboard.read()) {
      const type = item.types.find((each) => each.startsWith('image/'));
      if (type) return [await item.getType(type)];
    }
  }
  return [await navigator.clipboard.readText()];
}
