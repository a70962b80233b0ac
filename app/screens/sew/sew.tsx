import { notionWords } from '../../drafting/catalogue';
import { cutWords, settingWords, sewsNothing, termsOnPaper, timeOf, titleOf, ways } from '../../drafting/guide';
import { Page, Picks, useWords } from '../../parts';
import { writtenTime } from '../../words';
import { printGuide } from '../../work/bridge';
import type { Making } from '../shared/making/making';
import { WithPattern } from '../shared/making/with-pattern';
import { PdfAct, ReadAct } from '../shared/pdf-act';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { troubleWords } from '../shared/trouble/attempt';
import { TermChips } from './terms/term-chips';
import { nextOf, type Sewing, useSewing } from './use-sewing';
import './sew.css';

/** Before the first stitch: what to cut and to have at hand, how long it takes, and all steps with how far she is. */
export function SewScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <SewPage making={making} />}</WithPattern>;
}

function SewPage({ making }: { readonly making: Making }) {
  const { toy, garment } = making;
  const { say } = useWords();
  const sewing = useSewing(making);
  const { drawn, guide } = sewing;
  usePlace(toy.id, garment.id, 'sew');
  const name = say(`garment.${garment.order.garment}.name`);
  const address = (...parts: string[]) => to('toy', toy.id, garment.id, ...parts);
  const next = nextOf(sewing);
  const begun = sewing.sewn.length > 0;
  return (
    <Page
      wide
      title={say('screen.sew.title', { garment: name, name: toy.name })}
      back={address('print')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={name}
      acts={
        guide && (
          <a class="go" href={next ? address('sew', next) : address('tried')}>
            {say(next === null ? 'screen.sew.tried' : begun ? 'screen.sew.go-on' : 'screen.sew.begin')}
          </a>
        )
      }
    >
      <div role="status" class="pattern-state">
        {drawn.is === 'drawing' && !guide && <p class="soft">{say('screen.pattern.drawing')}</p>}
        {drawn.is === 'failed' && <p class="slip warn">{troubleWords(say, drawn.code)}</p>}
        {drawn.is === 'refused' && <p>{say('screen.pattern.refused')}</p>}
      </div>
      {sewing.draft && guide && <Ready sewing={sewing} address={address} />}
    </Page>
  );
}

type ReadyProps = { readonly sewing: Sewing; readonly address: (...parts: string[]) => string };

function Ready({ sewing, address }: ReadyProps) {
  const { say, hand } = useWords();
  const { draft, guide, way, sewn, seam } = sewing;
  if (!draft || !guide) return null;
  const telling = { say, unit: hand.unit, way };
  const scissors = sewsNothing(guide);
  const file = [draft.toy, say(`garment.${draft.order.garment}.name`), say('screen.sew.file')].join(' ');
  return (
    <div class="columns">
      <div class="column">
        <Picks
          legend={say('screen.sew.way')}
          chosen={way}
          onPick={sewing.setWay}
          picks={ways.map((value) => ({
            value,
            words: say(`screen.sew.by-${value}`),
            note: say('screen.sew.about', { time: writtenTime(timeOf(guide, value), hand.locale) }),
          }))}
        />
        <section class="sew-part">
          <h2>{say('screen.sew.cut')}</h2>
          <ul class="sew-told">
            {guide.cut.map((row) => (
              <li key={row.piece}>{cutWords(row, say)}</li>
            ))}
          </ul>
          <p>{say('screen.sew.cut-how')}</p>
          <p>{say('screen.sew.paper-first')}</p>
          <TermChips terms={termsOnPaper} />
        </section>
        <section class="sew-part">
          <h2>{say('notion.title')}</h2>
          <ul class="sew-told">
            {draft.notions.map((notion) => (
              <li key={`${notion.kind} ${notion.place}`}>{notionWords(notion, say, hand.unit)}</li>
            ))}
            {!scissors && <li>{settingWords(draft, telling)}</li>}
            <li>{say(`screen.sew.tools-${scissors ? 'scissors' : way}`)}</li>
            {!scissors && <li>{say('screen.sew.kind-tools')}</li>}
          </ul>
        </section>
        {!scissors && (
          <section class="slip ask">
            <h2>{say('screen.sew.seam-title')}</h2>
            <p>
              {say(seam === null ? 'screen.sew.seam-why' : 'screen.sew.seam-known', {
                seam: seam ?? 0,
                unit: hand.unit,
              })}
            </p>
            <a class="plain" href={address('seam')}>
              {say('screen.sew.seam-check')}
            </a>
          </section>
        )}
      </div>
      <div class="column">
        <section class="sew-part">
          <h2>{say('screen.sew.steps', { count: guide.steps.length })}</h2>
          <ol class="sew-list">
            {guide.steps.map((step) => (
              <li key={step.id}>
                <a href={address('sew', step.id)}>{titleOf(step, say)}</a>
                {sewn.includes(step.id) && <span class="sew-done">{say('screen.sew.done')}</span>}
              </li>
            ))}
          </ol>
        </section>
        <section class="slip">
          <h2>{say('screen.care.title')}</h2>
          <p>{say('screen.sew.care')}</p>
          <p class="soft small">{say('screen.care.rules')}</p>
        </section>
        <section class="sew-part">
          <h2>{say('screen.sew.tried')}</h2>
          <a class="plain" href={address('tried')}>
            {say('screen.sew.tried-go')}
          </a>
          <a class="plain" href={address('kept')}>
            {say('screen.kept.title')}
          </a>
        </section>
        <PdfAct words={say('screen.sew.save')} name={file} make={(asked) => printGuide(draft, { ...asked, way })} />
        <ReadAct name={file} what={() => ({ of: 'sewing', draft, way })} />
      </div>
    </div>
  );
}
