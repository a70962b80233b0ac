import type { Unit } from '../../body';
import { papers, prints } from '../../drafting/sheets';
import { Icon, Page, Segments, useWords } from '../../parts';
import { setSetting } from '../../storage';
import { locales, ownName } from '../../words';
import { printTape } from '../../work/bridge';
import type { Theme } from '../shared/defaults';
import { knownPaper } from '../shared/known-paper';
import { useLiking } from '../shared/liking';
import { PdfAct, ReadAct } from '../shared/pdf-act';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import { StoreHealth } from './store-health';
import './settings.css';

const units: readonly Unit[] = ['in', 'cm'];
const themes: readonly Theme[] = ['auto', 'light', 'dark'];
const hands = ['right', 'left'] as const;
const sizes = ['usual', 'large'] as const;
const voices = ['off', 'on'] as const;

/** How the app is set, and how what it keeps is doing. */
export function SettingsScreen() {
  const { say } = useWords();
  const liking = useLiking();
  const attempt = useAttempt();
  const set = (key: string) => (value: string) => void attempt(() => setSetting(key, value));
  return (
    <Page wide title={say('screen.settings.title')} back={to()}>
      <div class="columns">
        <div class="column settings">
          <Segments
            legend={say('screen.unit.name')}
            chosen={liking.unit}
            onPick={set('unit')}
            picks={units.map((value) => ({ value, words: say(`screen.unit.${value}`) }))}
          />
          <Segments
            legend={say('screen.settings.theme')}
            chosen={liking.theme}
            onPick={set('theme')}
            picks={themes.map((value) => ({ value, words: say(`screen.settings.theme-${value}`) }))}
          />
          <Segments
            legend={say('screen.settings.hand')}
            note={say('screen.settings.hand-note')}
            chosen={liking.hand}
            onPick={set('hand')}
            picks={hands.map((value) => ({ value, words: say(`screen.settings.hand-${value}`) }))}
          />
          <Segments
            legend={say('screen.settings.figures')}
            chosen={liking.figures}
            onPick={set('figures')}
            picks={sizes.map((value) => ({ value, words: say(`screen.settings.figures-${value}`) }))}
          />
          <Segments
            legend={say('screen.settings.aloud')}
            note={say('screen.settings.aloud-note')}
            chosen={liking.aloud ? 'on' : 'off'}
            onPick={(value) => void attempt(() => setSetting('aloud', value === 'on'))}
            picks={voices.map((value) => ({ value, words: say(`screen.settings.aloud-${value}`) }))}
          />
          <Segments
            legend={say('screen.settings.learns')}
            note={say('screen.settings.learns-what')}
            chosen={String(liking.learns)}
            onPick={(value) => void attempt(() => setSetting('learns', value === 'true'))}
            picks={[true, false].map((value) => ({
              value: String(value),
              words: say(`screen.settings.learns-${value}`),
            }))}
          />
          <Segments
            legend={say('screen.print.size.name')}
            chosen={liking.print}
            onPick={set('print')}
            picks={prints.map((value) => ({ value, words: say(`screen.print.size.${value}`) }))}
          />
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
                <option key={id} value={id} lang={id}>
                  {ownName(id)}
                </option>
              ))}
            </select>
          </label>
        </div>
        <div class="column">
          <PdfAct words={say('screen.settings.tape')} name={say('screen.settings.tape-file')} make={printTape} />
          <ReadAct name={say('screen.settings.tape-file')} what={() => ({ of: 'tape' })} />
          <StoreHealth />
          <nav class="settings-links" aria-label={say('screen.settings.more')}>
            {(['backup', 'about'] as const).map((screen) => (
              <a key={screen} href={to('settings', screen)}>
                {say(`screen.${screen}.title`)}
                <Icon name="on" />
              </a>
            ))}
          </nav>
        </div>
      </div>
    </Page>
  );
}
