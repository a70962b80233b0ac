import { useEffect, useMemo, useState } from 'preact/hooks';
import { Icon, useHeading, useWords } from '../../parts';
import { type Place, type Toy, whereWasI } from '../../storage';
import { noteHappening } from '../shared/trouble/happened';
import { BackupReminder } from './backup-reminder';
import { GoOn } from './go-on';
import { LongList } from './long-list';
import { ToyRow } from './toy-row';

/** With this many toys a name is quicker found by typing. */
const SEARCH_FROM = 7;

type ToyShelfProps = { readonly toys: readonly Toy[]; readonly newer: readonly string[] };

/** Her toys, and the one she was measuring first. */
export function ToyShelf({ toys, newer }: ToyShelfProps) {
  const { say, hand } = useWords();
  const heading = useHeading(say('screen.toys.title'));
  const [sought, setSought] = useState('');
  const place = useLatestPlace(toys);
  const resumed = toys.find((toy) => toy.id === place?.toyId);
  // Whoever seeks types no accents: “apfel” finds “Äpfelchen”.
  const plain = (text: string) => text.toLocaleLowerCase(hand.locale).normalize('NFKD').replace(/\p{M}/gu, '');
  const wanted = plain(sought.trim());
  const seeking = wanted !== '';
  const names = useMemo(() => (seeking ? toys.map((toy) => plain(toy.name)) : []), [toys, hand.locale, seeking]);
  const found = !seeking ? toys : toys.filter((_, at) => names[at]?.includes(wanted));
  return (
    <main class="page-main">
      <h1 tabIndex={-1} ref={heading}>
        {say('screen.toys.title')}
      </h1>
      {place && resumed && <GoOn toy={resumed} place={place} />}
      {toys.length >= SEARCH_FROM && (
        <label class="seek">
          <Icon name="seek" />
          <span class="unseen">{say('screen.toys.seek')}</span>
          <input
            type="search"
            value={sought}
            placeholder={say('screen.toys.seek')}
            onInput={(event) => setSought(event.currentTarget.value)}
          />
        </label>
      )}
      <LongList items={found} keyOf={(toy) => toy.id}>
        {(toy) => <ToyRow toy={toy} />}
      </LongList>
      {newer.length > 0 && <p class="slip">{say('screen.newer.toys', { count: newer.length, names: newer })}</p>}
      {found.length === 0 && toys.length > 0 && <p class="soft">{say('screen.toys.none', { sought })}</p>}
      <BackupReminder />
    </main>
  );
}

function useLatestPlace(toys: readonly Toy[]): Place | undefined {
  const [place, setPlace] = useState<Place>();
  useEffect(() => {
    whereWasI().then(setPlace, noteHappening);
  }, [toys]);
  return place;
}
