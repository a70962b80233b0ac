import { Icon, Page, useWords } from '../../parts';
import { changeGarment, setSetting, wallClock } from '../../storage';
import { madeOf } from '../shared/again/made';
import { knownPaper } from '../shared/known-paper';
import { useLiking } from '../shared/liking';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { troubleWords, useAttempt } from '../shared/trouble/attempt';
import { Care } from './care';
import { PageThumbs } from './page-thumbs';
import { PaperPicks } from './paper-picks';
import { PdfActs } from './pdf-acts';
import { TrueScale } from './true-scale';
import { layoutOf, usePdf } from './use-pdf';
import './print.css';

/** The pattern on paper: which paper, how many pages, the PDF to save or share. */
export function PrintScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <PrintPage making={making} />}</WithPattern>;
}

function PrintPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const { paper: liked, halves, correction } = useLiking();
  const paper = knownPaper(liked);
  const { toy, garment } = making;
  const drawn = useDraft(bodyKnown(making), garment.order, toy.name);
  const draft = draftOf(drawn);
  const pdf = usePdf(making.body, draft, { paper, halves, correction });
  const layout = layoutOf(pdf);
  usePlace(toy.id, garment.id, 'print');
  const name = say(`garment.${garment.order.garment}.name`);
  const whose = say('screen.making.whose', { name: toy.name, garment: name });
  const made = () =>
    attempt(async () => {
      if (draft) await changeGarment(garment.id, { made: madeOf(draft, making, wallClock()) });
    });
  const set = (key: string, value: string | boolean | number) => void attempt(() => setSetting(key, value));
  return (
    <Page
      wide
      title={say('screen.print.title')}
      back={to('toy', toy.id, garment.id, 'pattern')}
      whose={<a href={to('toy', toy.id)}>{whose}</a>}
      acts={<PdfActs pdf={pdf} name={`${toy.name} ${name}`} onTaken={made} />}
    >
      <div class="columns">
        <div class="column">
          <p role="status" class="print-state">
            {pdf.is === 'ready'
              ? say('screen.print.pages', { count: pdf.layout.pages.length })
              : pdf.is === 'making' && say('screen.print.making')}
          </p>
          <section class="slip ask">
            <h2>{say('screen.print.how')}</h2>
            <p>
              <b>{say('screen.print.actual')}</b> {say('screen.print.check')}
            </p>
          </section>
          {draft && layout ? <PageThumbs draft={draft} layout={layout} /> : <div class="page-thumbs empty" />}
          {pdf.is === 'failed' && <p class="slip warn">{troubleWords(say, pdf.code)}</p>}
          {drawn.is === 'refused' && <p class="slip warn">{say('screen.pattern.refused')}</p>}
          <p>
            <a class="plain" href={to('toy', toy.id, garment.id, 'sew')}>
              {say('screen.print.sew')}
            </a>
          </p>
          <p class="print-state">
            <a class="plain" href={to('toy', toy.id, garment.id, 'pencil')}>
              <Icon name="pencil" />
              {say('screen.print.pencil')}
            </a>
          </p>
        </div>
        <div class="column">
          <PaperPicks paper={paper} halves={halves} onSet={set} />
          <TrueScale correction={correction} onCorrection={(value) => set('device-print-correction', value)} />
          <Care />
        </div>
      </div>
    </Page>
  );
}
