import { useId, useState } from 'preact/hooks';
import { BANK_CARD_MM, MM_PER_INCH } from '../../body';
import { useWords } from '../../parts';

type CalibrateProps = { readonly dotsPerMm: number | null; readonly onMeasured: (dotsPerMm: number) => void };

/** What a pixel of a style sheet is on a desk and on a phone, for a first guess (CSS Values 4, 6.2; common practice). */
const GUESSED_PER_INCH = { desk: 96, hand: 140 } as const;
/** Each press makes the outline this much larger or smaller. */
const STEP = 1.004;
/** So much of the card's upper end is drawn, mm: its width is all that counts. */
const SHOWN_MM = 36;
/** How far the slider goes either way. */
const REACH = 1.6;

/** The outline of a bank card, made as large as the card that lies on it: upright, since phones are narrow. */
export function Calibrate({ dotsPerMm, onMeasured }: CalibrateProps) {
  const { say } = useWords();
  const id = useId();
  const [guess] = useState(() => (dotsPerMm ? dotsPerMm / devicePixelRatio : guessed()));
  const [scale, setScale] = useState(guess);
  const { width, height, corner } = BANK_CARD_MM;
  return (
    <section class="calibrate">
      <p id={id}>{say('screen.true-size.how')}</p>
      <div class="calibrate-window">
        <svg
          class="calibrate-card"
          width={(height + 2) * scale}
          height={SHOWN_MM * scale}
          viewBox={`-1 -1 ${height + 2} ${SHOWN_MM}`}
          role="img"
          aria-label={say('screen.true-size.card')}
        >
          <rect width={height} height={width} rx={corner} />
        </svg>
      </div>
      <div class="calibrate-acts">
        <button
          type="button"
          class="plain round"
          aria-label={say('screen.true-size.smaller')}
          onClick={() => setScale(scale / STEP)}
        >
          <span aria-hidden="true">−</span>
        </button>
        <input
          type="range"
          min={guess / REACH}
          max={guess * REACH}
          step="any"
          value={scale}
          aria-label={say('screen.true-size.size')}
          aria-describedby={id}
          onInput={(event) => setScale(Number(event.currentTarget.value))}
        />
        <button
          type="button"
          class="plain round"
          aria-label={say('screen.true-size.larger')}
          onClick={() => setScale(scale * STEP)}
        >
          <span aria-hidden="true">+</span>
        </button>
      </div>
      <button type="button" class="go" onClick={() => onMeasured(scale * devicePixelRatio)}>
        {say('screen.true-size.fits')}
      </button>
    </section>
  );
}

function guessed(): number {
  const inHand = matchMedia('(pointer: coarse)').matches;
  return GUESSED_PER_INCH[inHand ? 'hand' : 'desk'] / MM_PER_INCH;
}
