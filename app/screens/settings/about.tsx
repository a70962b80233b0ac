import { useState } from 'preact/hooks';
import { Page, useWords } from '../../parts';
import { forgetShared } from '../../sharing/inbox';
import { forgetEverything } from '../../storage';
import { engineVersion } from '../shared/engine';
import { go, to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import { CopyHappened } from '../shared/trouble/copy-happened';
import { noteHappening } from '../shared/trouble/happened';
import './settings.css';

/** What this is, which version, what to send to whoever helps, and how to leave no trace. */
export function AboutScreen() {
  const { say } = useWords();
  return (
    <Page title={say('screen.about.title')} back={to('settings')}>
      <p>{say('screen.about.what')}</p>
      <p>{say('screen.about.privacy')}</p>
      <p class="soft">{say('screen.about.version', { version: engineVersion })}</p>
      <CopyHappened />
      <Forget />
    </Page>
  );
}

function Forget() {
  const { say } = useWords();
  const attempt = useAttempt();
  const [sure, setSure] = useState(false);
  const forget = () =>
    attempt(async () => {
      await forgetShared().catch(noteHappening);
      await forgetEverything();
      go(to(), 'replace');
      location.reload();
    });
  return (
    <section class={sure ? 'slip warn' : 'forget'}>
      <h2>{say('screen.forget.title')}</h2>
      <p>{say('screen.forget.what')}</p>
      <div class="slip-acts">
        {sure ? (
          <>
            <button type="button" class="plain" onClick={forget}>
              {say('screen.forget.sure')}
            </button>
            <button type="button" class="quiet" onClick={() => setSure(false)}>
              {say('screen.cancel')}
            </button>
          </>
        ) : (
          <button type="button" class="quiet warn" onClick={() => setSure(true)}>
            {say('screen.forget.ask')}
          </button>
        )}
      </div>
    </section>
  );
}
