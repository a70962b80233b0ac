import { Page, useWords } from '../../../parts';
import { to } from '../route';
import { CopyHappened } from './copy-happened';

type TroubleProps = {
  readonly code: string;
  readonly act: { readonly words: string; readonly run: () => void };
};

/** A screen for when nothing else can be shown: what happened, that nothing is lost, what to do. The settings, and the backup in them, stay in reach. */
export function Trouble({ code, act }: TroubleProps) {
  const { say } = useWords();
  return (
    <Page
      title={say(`screen.trouble.${code}.title`)}
      acts={
        <>
          {code.startsWith('screen-') && (
            <a class="plain" href={to('settings')}>
              {say('screen.settings.title')}
            </a>
          )}
          <button type="button" class="go" onClick={act.run}>
            {say(act.words)}
          </button>
        </>
      }
    >
      <p>{say(`screen.trouble.${code}.what`)}</p>
      <p class="soft">{say(`screen.trouble.${code}.do`)}</p>
      <CopyHappened code={code} />
    </Page>
  );
}
