import { useState } from 'preact/hooks';
import { Icon, useWords } from '../../parts';
import { fileName } from '../shared/file-name';
import { ReadAct } from '../shared/pdf-act';
import { saveFile } from '../shared/save-file';
import { useNotice } from '../shared/trouble/notice';
import { PrintCard } from './print-card';
import type { Outgoing } from './use-outgoing';

type OutgoingProps = { readonly outgoing: Outgoing; readonly name: string };

/** The two usual ways out. Only the picture goes through the system's share sheet: browsers refuse other files, or hang. */
export function SendActs({ outgoing, name }: OutgoingProps) {
  const { say } = useWords();
  const picture = pictureFile(outgoing, name);
  return (
    <>
      <CopyLink link={outgoing.link} />
      {canShare(picture) ? (
        // Nothing waits for the share to end: some systems never tell.
        <button
          type="button"
          class="go"
          onClick={() => void navigator.share({ files: [picture] }).catch(() => undefined)}
        >
          <Icon name="share" />
          {say('screen.share.picture')}
        </button>
      ) : (
        <button type="button" class="go" onClick={() => saveFile(picture, picture.name)}>
          <Icon name="save" />
          {say('screen.share.save-picture')}
        </button>
      )}
    </>
  );
}

/** The other ways: a file for those who keep files, paper, and the picture as a file where it can be shared too. */
export function MoreWays({ outgoing, name }: OutgoingProps) {
  const { say } = useWords();
  const picture = pictureFile(outgoing, name);
  const file = new Blob([outgoing.json], { type: 'application/json' });
  return (
    <div class="more-ways">
      {canShare(picture) && (
        <button type="button" class="quiet" onClick={() => saveFile(picture, picture.name)}>
          <Icon name="save" />
          {say('screen.share.save-picture')}
        </button>
      )}
      <button type="button" class="quiet" onClick={() => saveFile(file, `${fileName(name, 'card')}.json`)}>
        <Icon name="save" />
        {say('screen.share.file')}
      </button>
      <PrintCard printed={outgoing.printed} />
      <ReadAct name={fileName(name, 'card')} what={() => ({ of: 'card', card: outgoing.words })} />
    </div>
  );
}

const pictureFile = ({ png }: Outgoing, name: string) =>
  new File([png], `${fileName(name, 'card')}.png`, { type: 'image/png' });

const canShare = (picture: File) =>
  typeof navigator.canShare === 'function' && navigator.canShare({ files: [picture] });

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
  if (byHand) {
    return (
      <label class="link-by-hand">
        {say('screen.share.by-hand')}
        <input type="text" readOnly value={link} onFocus={(event) => event.currentTarget.select()} />
      </label>
    );
  }
  return (
    <button type="button" class="plain" onClick={copy}>
      <Icon name="copy" />
      {say('screen.share.link')}
    </button>
  );
}
