import { useState } from 'preact/hooks';
import { Icon, useWords } from '../../parts';
import { fileName } from '../file-name';
import { saveFile } from '../save-file';
import { useNotice } from '../shell/notice';
import type { Outgoing } from './use-outgoing';

type OutgoingActsProps = { readonly outgoing: Outgoing; readonly name: string };

/** The ways out. Only the picture goes through the system's share sheet: browsers refuse other files, or hang. */
export function OutgoingActs({ outgoing, name }: OutgoingActsProps) {
  const { say } = useWords();
  const stem = fileName(name, 'card');
  const picture = new File([outgoing.png], `${stem}.png`, { type: 'image/png' });
  const shares = typeof navigator.canShare === 'function' && navigator.canShare({ files: [picture] });
  const save = () => saveFile(picture, picture.name);
  return (
    <>
      {shares && (
        // Nothing waits for the share to end: some systems never tell.
        <button
          type="button"
          class="go"
          onClick={() => void navigator.share({ files: [picture] }).catch(() => undefined)}
        >
          <Icon name="share" />
          {say('screen.share.picture')}
        </button>
      )}
      <button type="button" class={shares ? 'plain' : 'go'} onClick={save}>
        <Icon name="save" />
        {say('screen.share.save-picture')}
      </button>
      <CopyLink link={outgoing.link} />
      <button
        type="button"
        class="quiet"
        onClick={() => saveFile(new Blob([outgoing.json], { type: 'application/json' }), `${stem}.json`)}
      >
        {say('screen.share.file')}
      </button>
      <button type="button" class="quiet" onClick={() => print()}>
        {say('screen.share.print')}
      </button>
    </>
  );
}

/** Copies the link; where copying is not allowed, shows it to be copied by hand. */
function CopyLink({ link }: { readonly link: string }) {
  const { say } = useWords();
  const notice = useNotice();
  const [byHand, setByHand] = useState(false);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      notice({ words: say('screen.share.copied') });
    } catch {
      setByHand(true);
    }
  };
  return (
    <>
      <button type="button" class="plain" onClick={copy}>
        <Icon name="copy" />
        {say('screen.share.link')}
      </button>
      {byHand && (
        <label class="link-by-hand">
          {say('screen.share.by-hand')}
          <input type="text" readOnly value={link} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </>
  );
}
