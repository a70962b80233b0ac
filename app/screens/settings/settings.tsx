import type { Unit } from '../../body';
import { papers } from '../../drafting/sheets';
import { Icon, Page, Picks, useWords } from '../../parts';
import { setSetting } from '../../storage';
import { locales } from '../../words';
import type { Theme } from '../shared/defaults';
import { knownPaper } from '../shared/known-paper';
import { useLiking } from '../shared/liking';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import { StoreHealth } from './store-health';
import { TapeAct } from './tape-act';
import './settings.css';

const units: readonly Unit[] = ['in', 'cm'];
const themes: readonly Theme[] = ['auto', 'light', 'dark'];

/** How the app is set, and how what it keeps is doing. */
export function SettingsScreen() {
  const { say, hand } = useWords();
  const liking = useLiking();
  const attempt = useAttempt();
  const set = (key: string) => (value: string) => void attempt(() => setSetting(key, value));
  const named = new Intl.DisplayNames([hand.locale], { type: 'language' });
  return (
    <Page title={say('screen.settings.title')} back={to()}>
      <Picks
        legend={say('screen.unit.name')}
        chosen={liking.unit}
        onPick={set('unit')}
        picks={units.map((value) => ({ value, words: say(`screen.unit.${value}`) }))}
      />
      <Picks
        legend={say('screen.settings.theme')}
        chosen={liking.theme}
        onPick={set('theme')}
        picks={themes.map((value) => ({ value, words: say(`screen.settings.theme-${value}`) }))}
      />
      <Picks
        legend={say('screen.settings.learns')}
        chosen={String(liking.learns)}
        onPick={(value) => void attempt(() => setSetting('learns', value === 'true'))}
        picks={[true, false].map((value) => ({ value: String(value), words: say(`screen.settings.learns-${value}`) }))}
      />
      <p class="soft small">{say('screen.settings.learns-what')}</p>
      <label class="setting">
        <span>{say('screen.settings.paper')}</span>
        <select value={knownPaper(liking.paper)} onChange={(event) => set('paper')(event.currentTarget.value)}>
          {Object.keys(papers).map((id) => (
            <option key={id} value={id}>
              {say(`paper.${id}`)}
            </option>
          ))}
        </select>
      </label>
      <label class="setting">
        <span>{say('screen.settings.language')}</span>
        <select
          value={new Intl.Locale(liking.locale).language}
          onChange={(event) => set('locale')(event.currentTarget.value)}
        >
          {locales.map((id) => (
            <option key={id} value={id}>
              {named.of(id) ?? id}
            </option>
          ))}
        </select>
      </label>
      <TapeAct />
      <StoreHealth />
      <nav class="settings-links" aria-label={say('screen.settings.more')}>
        {(['backup', 'about'] as const).map((screen) => (
          <a key={screen} href={to('settings', screen)}>
            {say(`screen.${screen}.title`)}
            <Icon name="on" />
          </a>
        ))}
      </nav>
    </Page>
  );
}
