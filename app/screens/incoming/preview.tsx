import { type Body, type Card, type Flag, judge, measures } from '../../body';
import { bodyFrom, settle } from '../../measuring';
import { Icon, Page, Portrait, sayFirst, shownLength, useWords } from '../../parts';
import { addCard, type Toy } from '../../storage';
import { forgetArrivals } from '../shared/arrivals';
import { useToys } from '../shared/keeping';
import { flagWords } from '../shared/making/flag-words';
import { go, to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import { useNotice } from '../shared/trouble/notice';
import { Skipped } from './skipped';

type PreviewProps = { readonly card: Card; readonly skipped: readonly string[] };

/** A card that came in, to be looked at: what it says, what looks doubtful in it, and then keep, or not now. */
export function Preview({ card, skipped }: PreviewProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  const toys = useToys();
  const name = card.toy.name || say('card.nameless');
  const known = toys.state === 'here' && toys.value.toys.some((toy: Toy) => toy.name === name);
  const body = bodyFrom(card);
  const keep = () =>
    attempt(async () => {
      const toy = await addCard({ ...card, toy: { ...card.toy, name } });
      forgetArrivals();
      go(to('toy', toy.id), 'replace');
      notice({ words: say('screen.card.kept', { name: toy.name }) });
    });
  const leave = () => {
    forgetArrivals();
    go(to(), 'replace');
  };
  return (
    <Page
      title={say('screen.card.for', { name })}
      acts={
        <>
          <button type="button" class="plain" onClick={leave}>
            {say('screen.not-now')}
          </button>
          <button type="button" class="go" onClick={keep}>
            {say('screen.card.keep')}
          </button>
        </>
      }
    >
      <div class="card-top">
        <span class="card-face">{card.photo ? <img src={card.photo} alt="" /> : <Portrait body={body} />}</span>
        <p class="soft">
          {say(`body.${card.toy.body}.name`)}
          <br />
          {say('card.taken', { date: card.taken })}
        </p>
      </div>
      {known && <p class="slip">{say('screen.card.same-name', { name })}</p>}
      {judge(body, {}).map(
        (flag) => flag.severity !== 'note' && <Doubt key={flag.code + flag.measures.join()} flag={flag} body={body} />,
      )}
      <Skipped names={skipped} />
      <Contents card={card} />
    </Page>
  );
}

function Doubt({ flag, body }: { readonly flag: Flag; readonly body: Body }) {
  const words = useWords();
  const { say } = words;
  return (
    <section class={flag.severity === 'impossible' ? 'slip warn' : 'slip ask'}>
      <h2 class="slip-title">
        <Icon name="warn" />
        {say(`screen.flag.${flag.severity}`)}
      </h2>
      <p>{flagWords(words, flag, body)}</p>
    </section>
  );
}

/** Everything the card says, in words and in the reader's own unit. */
function Contents({ card }: { readonly card: Card }) {
  const { say, hand } = useWords();
  const numbers = measures.flatMap(({ id }) => {
    const settled = settle(card.readings[id] ?? []);
    return settled ? [[id, say(`measure.${id}.name`), shownLength(settled.value, hand)] as const] : [];
  });
  const looks = Object.entries(card.toy.traits).map(
    ([trait, value]) => [trait, say(`trait.${trait}.name`), say(`trait.${trait}.${value}`)] as const,
  );
  const corrections = Object.keys(card.corrections ?? {}).length;
  const learnt = corrections > 0 ? [['corrections', say('card.part.corrections'), String(corrections)] as const] : [];
  const clothes = (card.orders ?? []).map(
    ({ garment }, at) =>
      [`order ${at}`, say('card.clothes'), sayFirst(say, [`garment.${garment}.name`, garment])] as const,
  );
  return (
    <>
      {card.note && <p class="card-note">{card.note}</p>}
      <dl class="card-numbers">
        {[...numbers, ...looks, ...learnt, ...clothes].map(([key, name, value]) => (
          <div key={key}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
