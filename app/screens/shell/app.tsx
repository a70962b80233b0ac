import { useEffect, useErrorBoundary, useMemo, useState } from 'preact/hooks';
import type { Hand, Say } from '../../body';
import { printed, WordsContext } from '../../parts';
import { onEnded, openStore, type Settings, type StoreCode, type StoreState } from '../../storage';
import { likingFrom } from '../shared/defaults';
import { useFreshScreens } from '../shared/fresh-screens';
import { useSettings } from '../shared/keeping';
import { lazily } from '../shared/lazily';
import { learnAll } from '../shared/learning';
import { LikingContext } from '../shared/liking';
import { useRoute } from '../shared/route';
import { usePassingOverTaps } from '../shared/second-taps';
import { noteHappening } from '../shared/trouble/happened';
import { NoticeBoard } from '../shared/trouble/notice';
import { Trouble } from '../shared/trouble/trouble';
import { useLanguage } from './language';
import { useLooks } from './theme';
import { useUpdateOffer } from './updates';
import { useScreen } from './use-screen';

/** The first screen has the device to itself for this long, ms. */
const CARE_MS = 2_000;
const Care = lazily(async () => {
  await new Promise((done) => setTimeout(done, CARE_MS));
  return (await Promise.all([import('./care'), learnAll(), import('./screens')]))[0].Care;
});

type AppProps = {
  readonly store: StoreState;
  readonly settings: Settings;
  readonly words: { readonly say: Say; readonly locale: string };
  /** Nothing set later is heeded either. */
  readonly plain?: boolean;
};

/** The whole app: settings in force, words in the right language, and the screen the address names. */
export function App({ store, settings, words, plain = false }: AppProps) {
  const kept = useSettings();
  const liking = useMemo(
    () => likingFrom(kept.state === 'here' && !plain ? kept.value : settings, navigator.languages),
    [kept, settings, plain],
  );
  const say = useLanguage(liking.locale, words);
  useLooks(liking);
  const value = useMemo(() => {
    const hand: Hand = { unit: liking.unit, locale: liking.locale };
    return { say: withUnit(say, hand), hand };
  }, [say, liking]);
  return (
    <WordsContext.Provider value={value}>
      <LikingContext.Provider value={liking}>
        <NoticeBoard>
          <Shown store={store} />
          {store.ok && <Care />}
        </NoticeBoard>
      </LikingContext.Provider>
    </WordsContext.Provider>
  );
}

function Shown({ store }: { readonly store: StoreState }) {
  const [state, setState] = useState(store);
  const [ended, setEnded] = useState<StoreCode | null>(null);
  const [broken, repair] = useErrorBoundary((error) => noteHappening(error));
  const route = useRoute();
  useEffect(() => onEnded(setEnded), []);
  useEffect(repair, [route.parts.join('/')]);
  useUpdateOffer(route.parts.join('/'));
  usePassingOverTaps();
  useFreshScreens(route.parts.join('/'));
  const shown = useScreen(route.parts);
  if (ended) return <Trouble code={ended} act={{ words: 'screen.trouble.reload', run: () => location.reload() }} />;
  if (!state.ok)
    return (
      <Trouble code={state.code} act={{ words: 'screen.trouble.again', run: () => void openStore().then(setState) }} />
    );
  if (broken)
    return <Trouble code="screen-broken" act={{ words: 'screen.trouble.home', run: () => location.replace('#/') }} />;
  if (shown === 'failed')
    return <Trouble code="screen-missing" act={{ words: 'screen.trouble.reload', run: () => location.reload() }} />;
  if (!shown) return <main class="loading" aria-busy="true" />;
  const { component: Screen, key, params } = shown;
  return <Screen key={key} params={params} query={route.query} found={state.found} />;
}

/** Sentences that hold a length say it in the maker's unit, its fractions as printed on a tape; how to type one is said as typed. */
const withUnit =
  (say: Say, hand: Hand): Say =>
  (code, values) => {
    const words = say(code, { unit: hand.unit, ...values });
    return code.startsWith('length.') ? words : printed(words);
  };
