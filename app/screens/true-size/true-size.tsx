import { useMemo, useState } from 'preact/hooks';
import { Page, Picks, useWords } from '../../parts';
import { setSetting } from '../../storage';
import { useAwake } from '../shared/awake';
import { useLiking } from '../shared/liking';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { drawPiece } from '../shared/pieces/piece-drawing';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { Calibrate } from './calibrate';
import { PieceParts } from './piece-parts';
import './true-size.css';

/** Pieces as large as they are, to be traced from the screen: first the screen is measured with a card, once. */
export function TrueSizeScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <TrueSize making={making} />}</WithPattern>;
}

function TrueSize({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const { dotsPerMm } = useLiking();
  const { toy, garment } = making;
  const draft = draftOf(useDraft(bodyKnown(making), garment.order, toy.name));
  const [piece, setPiece] = useState(0);
  const [again, setAgain] = useState(false);
  useAwake();
  const drawings = useMemo(() => draft?.pieces.map(drawPiece) ?? [], [draft]);
  const measured = (dots: number) => {
    setAgain(false);
    void attempt(() => setSetting('device-dots-per-mm', dots));
  };
  const drawing = drawings[piece];
  const known = dotsPerMm !== null && !again;
  return (
    <Page
      wide
      title={say('screen.true-size.title')}
      back={to('toy', toy.id, garment.id, 'print')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`garment.${garment.order.garment}.name`)}
    >
      {!known && <Calibrate dotsPerMm={dotsPerMm} onMeasured={measured} />}
      {known && drawing && (
        <>
          <Picks
            legend={say('screen.pencil.which')}
            chosen={String(piece)}
            onPick={(value) => setPiece(Number(value))}
            picks={(draft?.pieces ?? []).map(({ name }, index) => ({
              value: String(index),
              words: say(`piece.${name}`),
            }))}
          />
          <PieceParts key={piece} drawing={drawing} dotsPerMm={dotsPerMm} />
          <button type="button" class="quiet" onClick={() => setAgain(true)}>
            {say('screen.true-size.again')}
          </button>
        </>
      )}
    </Page>
  );
}
