import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { Body } from '../../../body';
import type { Draft } from '../../../drafting/draft-types';
import { dressed, type Side, sidesOf } from '../../../dressed';
import { FigurePicture, type pictureBar, useWords } from '../../../parts';
import './dressed-panel.css';

/** As wide as high, or nearly: a toy in clothes, in the figure's own units. */
const FRAME = { width: 210, height: 220 };

type DressedPanelProps = {
  readonly body: Body;
  /** What it wears; nothing while nothing is drawn. */
  readonly draft: Draft | null;
  readonly busy: boolean;
  /** Whose clothes these are, for who does not see them. */
  readonly text: string;
  /** Where it is held in sight while the rest scrolls. */
  readonly bar?: typeof pictureBar;
  readonly children?: ComponentChildren;
};

/** The toy in its new clothes, to be turned round; where there is room, both sides at once. */
export function DressedPanel({ body, draft, busy, text, bar, children }: DressedPanelProps) {
  const { say } = useWords();
  const [turned, setTurned] = useState<Side | null>(null);
  const sides = useMemo(() => sidesOf(body, draft), [body, draft]);
  const shown = turned && sides.includes(turned) ? turned : sides[0];
  const figures = useMemo(() => sides.map((side) => dressed(body, draft, side, FRAME)), [body, draft, sides]);
  return (
    <figure class="dressed" ref={bar ?? null}>
      <div class={busy ? 'dressed-figures busy' : 'dressed-figures'}>
        {figures.map((figure) => (
          <div key={figure.view} class={figure.view === shown ? 'dressed-near' : 'dressed-away'}>
            <FigurePicture figure={figure} text={say(`dressed.${figure.view}`, { what: text })} />
          </div>
        ))}
      </div>
      <fieldset class="dressed-sides" aria-label={say('dressed.turn')}>
        {sides.map((side) => (
          <button key={side} type="button" aria-pressed={side === shown} onClick={() => setTurned(side)}>
            {say(`dressed.side-${side}`)}
          </button>
        ))}
      </fieldset>
      {children && <figcaption>{children}</figcaption>}
    </figure>
  );
}
