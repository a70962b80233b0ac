import { useEffect, useRef, useState } from 'preact/hooks';
import type { Term } from '../../../drafting/guide';
import { Gap, useWords } from '../../../parts';
import { termPictures } from './term-pictures';
import './terms.css';

/** The words of the trade spoken of here: a tap on one explains it in its place, another puts it away. */
export function TermChips({ terms }: { readonly terms: readonly Term[] }) {
  const { say } = useWords();
  const [open, setOpen] = useState<Term | null>(null);
  if (terms.length === 0) return null;
  return (
    <div class="terms">
      {open && <TermSlip key={open} term={open} onClose={() => setOpen(null)} />}
      <ul class="term-chips" aria-label={say('screen.sew.words')}>
        {terms.map((term) => (
          <li key={term}>
            <button
              type="button"
              class="term-chip"
              aria-expanded={open === term}
              onClick={() => setOpen(open === term ? null : term)}
            >
              {say(`term.${term}.name`)}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function TermSlip({ term, onClose }: { readonly term: Term; readonly onClose: () => void }) {
  const { say } = useWords();
  const slip = useRef<HTMLDivElement>(null);
  useEffect(() => slip.current?.focus({ preventScroll: true }), []);
  return (
    <div
      class="term-slip"
      ref={slip}
      tabIndex={-1}
      role="note"
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <svg class="term-picture" viewBox="0 0 120 64" aria-hidden="true" focusable="false">
        {termPictures[term].map(([as, d]) => (
          <path key={as + d} class={`term-${as}`} d={d} />
        ))}
      </svg>
      <p>
        <b>{say(`term.${term}.name`)}</b>
        <Gap />
        {say(`term.${term}.means`)}
      </p>
      <button type="button" class="quiet" onClick={onClose}>
        {say('screen.close')}
      </button>
    </div>
  );
}
