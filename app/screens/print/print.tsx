import { useState } from 'preact/hooks';
import { Gap, Icon, Page, useWords } from '../../parts';
import { changeGarment, setSetting, wallClock } from '../../storage';
import { madeOfAll } from '../shared/again/made';
import { Care } from '../shared/care/care';
import { knownPaper } from '../shared/known-paper';
import { useLiking } from '../shared/liking';
import type { Making } from '../shared/making/making';
import { makingWords, wholeAddress } from '../shared/making/outfit';
import { draftOf } from '../shared/making/use-draft';
import { useWholeDraft } from '../shared/making/use-whole-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { troubleWords, useAttempt } from '../shared/trouble/attempt';
import { MoreWays } from './more-ways';
import { PageThumbs } from './page-thumbs';
import { PaperPicks } from './paper-picks';
import { PdfActs } from './pdf-acts';
import { TrueScale } from './true-scale';
import { sheetsOf, usePdf } from './use-pdf';
import { USUAL_WISH } from './wish';
import './print.css';

/** The pattern on paper: which paper, how many pages, the PDF to save or share. */
export function PrintScreen({ params }: ScreenProps) {
  return (
    <WithPattern params={params} several>
      {(making) => <PrintPage making={making} />}
    </WithPattern>
  );
}

function PrintPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const { paper: liked, halves, correction, print: size } = useLiking();
  const paper = knownPaper(liked);
  const { toy, garment } = making;
  const drawn = useWholeDraft(making);
  const several = making.also.length > 0;
  const draft = draftOf(drawn);
  const [wish, setWish] = useState(USUAL_WISH);
  const [others, setOthers] = useState<readonly Making[]>([]);
  const pdf = usePdf(making, draft, others, { paper, halves, correction, size, ...wish });
  const sheets = sheetsOf(pdf);
  const count = wish.copies * sheets.reduce((sum, { layout }) => sum + layout.pages.length, 0);
  usePlace(toy.id, garment.id, 'print');
  const name = makingWords(say, making);
  const whose = say('screen.making.whose', { name: toy.name, garment: name });
  const made = () =>
    attempt(async () => {
      for (const [id, made] of draft ? madeOfAll(draft, making, wallClock()) : []) await changeGarment(id, { made });
    });
  const set = (key: string, value: string | boolean | number) => void attempt(() => setSetting(key, value));
  return (
    <Page
      wide
      title={say('screen.print.title')}
      back={wholeAddress(making)}
      whose={<a href={to('toy', toy.id)}>{whose}</a>}
      acts={<PdfActs pdf={pdf} name={`${toy.name} ${name}`} onTaken={made} />}
    >
      <div class="columns">
        <div class="column">
          <p role="status" class="print-state">
            {pdf.is === 'ready'
              ? say(wish.list || size === 'large' ? 'screen.print.pages-and-list' : 'screen.print.pages', { count })
              : pdf.is === 'making' && say('screen.print.making')}
          </p>
          <section class="slip ask">
            <h2>{say('screen.print.how')}</h2>
            <p>
              <b>{say('screen.print.actual')}</b>
              <Gap />
              {say('screen.print.check')}
            </p>
          </section>
          {sheets.length === 0 && <div class="page-thumbs empty" />}
          {sheets.map((each, index) => (
            <section key={index}>
              {others.length > 0 && <h2>{each.draft.toy}</h2>}
              <PageThumbs sheets={each} name={`${each.draft.toy} ${name}`} />
            </section>
          ))}
          {pdf.is === 'ready' && pdf.refused.length > 0 && (
            <p class="slip warn">{say('screen.print.refused', { toys: pdf.refused })}</p>
          )}
          {pdf.is === 'failed' && <p class="slip warn">{troubleWords(say, pdf.code)}</p>}
          {drawn.is === 'refused' && <p class="slip warn">{say('screen.pattern.refused')}</p>}
          {!several && <OtherWays toyId={toy.id} garmentId={garment.id} />}
        </div>
        <div class="column">
          <PaperPicks paper={paper} onPaper={(chosen) => set('paper', chosen)} />
          <TrueScale correction={correction} onCorrection={(value) => set('device-print-correction', value)} />
          <MoreWays
            {...{ making, draft, paper, halves, size, wish, others }}
            layout={sheets[0]?.layout}
            onWish={setWish}
            onOthers={setOthers}
            onHalves={(chosen) => set('halves', chosen)}
            onSize={(chosen) => set('print', chosen)}
          />
          <Care toy={toy} />
        </div>
      </div>
    </Page>
  );
}

/** Sewing it, and drawing or tracing it without a printer: each garment by itself. */
function OtherWays({ toyId, garmentId }: { readonly toyId: string; readonly garmentId: string }) {
  const { say } = useWords();
  return (
    <>
      <p>
        <a class="plain" href={to('toy', toyId, garmentId, 'sew')}>
          {say('screen.print.sew')}
        </a>
      </p>
      <p>
        <a class="plain" href={to('toy', toyId, garmentId, 'pencil')}>
          <Icon name="pencil" />
          {say('screen.print.pencil')}
        </a>
      </p>
      <p>
        <a class="plain" href={to('toy', toyId, garmentId, 'true-size')}>
          {say('screen.print.true-size')}
        </a>
      </p>
    </>
  );
}
