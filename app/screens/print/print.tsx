import { useState } from 'preact/hooks';
import { papers } from '../../drafting/sheets';
import { Page, Picks, useWords } from '../../parts';
import { setSetting } from '../../storage';
import { bodyKnown, type Making } from '../making';
import { usePlace } from '../places';
import { to } from '../route';
import { troubleWords, useAttempt } from '../shell/attempt';
import { useLiking } from '../shell/liking';
import type { ScreenProps } from '../shell/screens';
import { draftOf, useDraft } from '../use-draft';
import { WithMaking } from '../with-making';
import { Care } from './care';
import { PaperPicture } from './paper-picture';
import { PdfActs } from './pdf-acts';
import { usePdf } from './use-pdf';
import './print.css';

/** The pattern on paper: which paper, how many pages, the PDF to save or share. */
export function PrintScreen({ params }: ScreenProps) {
  return <WithMaking params={params}>{(making) => <PrintPage making={making} />}</WithMaking>;
}

function PrintPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const liking = useLiking();
  const [paper, setPaper] = useState(liking.paper);
  const { toy, garment } = making;
  const drawn = useDraft(bodyKnown(making), garment.order, toy.name);
  const pdf = usePdf(draftOf(drawn), paper);
  usePlace(toy.id, garment.id, 'print');
  const name = say(`garment.${garment.order.garment}.name`);
  const pick = (chosen: string) => {
    setPaper(chosen);
    void attempt(() => setSetting('paper', chosen));
  };
  return (
    <Page
      title={say('screen.print.title')}
      back={to('toy', toy.id, garment.id, 'pattern')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={name}
      acts={<PdfActs pdf={pdf} name={`${toy.name} ${name}`} />}
    >
      <Picks
        legend={say('screen.print.paper')}
        chosen={paper}
        onPick={pick}
        picks={Object.entries(papers).map(([id, size]) => ({
          value: id,
          words: say(`paper.${id}`),
          picture: <PaperPicture width={size.width} height={size.height} />,
        }))}
      />
      <p role="status" class="print-state">
        {pdf.is === 'ready' && say('screen.print.pages', { count: pdf.pages })}
        {pdf.is === 'making' && say('screen.print.making')}
      </p>
      {pdf.is === 'failed' && <p class="slip warn">{troubleWords(say, pdf.code)}</p>}
      {drawn.is === 'refused' && <p class="slip warn">{say('screen.pattern.refused')}</p>}
      <section class="slip">
        <h2>{say('screen.print.how')}</h2>
        <p>{say('screen.print.actual')}</p>
        <p>{say('screen.print.check')}</p>
      </section>
      <Care />
    </Page>
  );
}
