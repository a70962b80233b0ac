import type { Order } from '../../body';
import type { Head } from '../../drafting/catalogue';
import { Page, Segments, useWords } from '../../parts';
import { saveGarment } from '../../storage';
import { forPlayer } from '../shared/care/for-player';
import { Worn } from '../shared/dressed/worn';
import { bodyOf, bodyShown } from '../shared/making/body-of';
import { useGarments } from '../shared/making/garments-known';
import { askedWords, numbersLeft } from '../shared/making/numbers-left';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { WithToy } from '../shared/with-toy';
import { type Ask, askedFor, askOf, asksAmong, orderFor } from './asked';
import './garments.css';

/** In the address, so that it is still asked for on the way back. */
const ONLY = 'only';

/** What to make, by picture: whatever suits this kind of body, and of that what is asked for. */
export function GarmentsScreen({ params, query }: ScreenProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const garments = useGarments();
  return (
    <WithToy toyId={params.toy ?? ''}>
      {({ toy, readings }) => {
        const suited = garments?.filter((garment) => garment.bodies.includes(toy.kind)) ?? [];
        const asks = asksAmong(suited);
        const ask = askOf(query.get(ONLY), suited);
        const show = (only: Ask) => go(`${to('toy', toy.id, 'make')}?${ONLY}=${only}`, 'replace');
        const known = bodyOf({ toy, readings });
        const body = bodyShown(known);
        const left = (row: Head) => askedWords(say, numbersLeft(row, toy, known));
        const begin = (order: Order) =>
          attempt(async () => {
            const { id } = await saveGarment(toy.id, order);
            go(to('toy', toy.id, id, 'choices'));
          });
        return (
          <Page title={say('screen.garments.title', { name: toy.name })} back={to('toy', toy.id)} whose={toy.name} wide>
            {asks.length > 0 && (
              <Segments
                legend={say('screen.garments.only')}
                picks={asks.map((value) => ({ value, words: say(`screen.garments.ask.${value}`) }))}
                chosen={ask}
                onPick={show}
              />
            )}
            <ul class="garments">
              {askedFor(ask, suited).map((row) => (
                <li key={row.id}>
                  <button
                    type="button"
                    class="garment"
                    onClick={() => begin(forPlayer(orderFor(ask, row), row, toy.plays))}
                  >
                    <Worn body={body} order={orderFor(ask, row)} />
                    <b>{say(`garment.${row.id}.name`)}</b>
                    <span class="soft small">{say(`garment.${row.id}.note`)}</span>
                    <span class="garment-left small">
                      {say('screen.garments.asks', { level: say(`level.${row.level}`), left: left(row) })}
                    </span>
                  </button>
                </li>
              ))}
            </ul>
            {suited.length > 0 && toy.kind !== 'upright' && (
              <p class="soft small">{say(`screen.garments.missing.${toy.kind}`)}</p>
            )}
            {garments && suited.length === 0 && <p>{say('screen.garments.none')}</p>}
          </Page>
        );
      }}
    </WithToy>
  );
}
