import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Icon, unless, useWords } from '../../../parts';
import { Folded } from '../folded/folded';
import type { usePanZoom } from './pan-zoom';
import './viewer.css';

type ViewerProps = {
  readonly title: string;
  readonly at: number;
  readonly all: number;
  readonly onTurn: (at: number) => void;
  readonly onClose: () => void;
  readonly view: ReturnType<typeof usePanZoom>;
  /** What the buttons for the one before and the next are called. */
  readonly names: { readonly before: string; readonly after: string };
  readonly note?: ComponentChildren;
  /** What it shows in words, fetched once they are asked for. */
  readonly words: ComponentChildren;
  readonly children: ComponentChildren;
};

/** Something large over the whole screen, to be moved, drawn nearer, and leafed through. */
export function Viewer({ title, at, all, onTurn, onClose, view, names, note, words, children }: ViewerProps) {
  const { say } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog class="viewer" ref={dialog} onClose={onClose} aria-label={title}>
      <header class="viewer-head">
        <button
          type="button"
          class="quiet round"
          aria-label={say('screen.close')}
          onClick={() => dialog.current?.close()}
        >
          <Icon name="cross" />
        </button>
        <h2>{title}</h2>
        <span class="soft small">{say('screen.pattern.piece-of', { at: at + 1, all })}</span>
      </header>
      <div class="viewer-table" {...view.hold}>
        {children}
      </div>
      <div class="viewer-note">
        <div class="soft small">{note}</div>
        <InWords>{words}</InWords>
      </div>
      <footer class="viewer-acts">
        <button type="button" class="plain round" aria-label={names.before} {...unless(at === 0, () => onTurn(at - 1))}>
          <Icon name="back" />
        </button>
        <button type="button" class="plain round" aria-label={say('screen.pattern.smaller')} onClick={view.out}>
          <span aria-hidden="true">−</span>
        </button>
        <button type="button" class="plain round" aria-label={say('screen.pattern.larger')} onClick={view.near}>
          <Icon name="plus" />
        </button>
        <button
          type="button"
          class="plain round"
          aria-label={names.after}
          {...unless(at === all - 1, () => onTurn(at + 1))}
        >
          <Icon name="on" />
        </button>
      </footer>
    </dialog>
  );
}

/** Words for all that is drawn, behind a row that folds open. */
function InWords({ children }: { readonly children: ComponentChildren }) {
  const { say } = useWords();
  const [asked, setAsked] = useState(false);
  return (
    <Folded title={say('screen.in-words')} onOpen={() => setAsked(true)}>
      {asked && children}
    </Folded>
  );
}
