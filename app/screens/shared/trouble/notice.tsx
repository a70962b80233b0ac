import { type ComponentChildren, createContext } from 'preact';
import { useCallback, useContext, useEffect, useRef, useState } from 'preact/hooks';
import { Icon, useWords } from '../../../parts';
import './notice.css';

/**
 * Something said at the head of whatever screen is shown, until it is closed, replaced, or left behind. One that `stays`
 * stands until it is closed, on every screen, beside whatever comes after it.
 */
export type Notice = {
  readonly words: string;
  readonly kind?: 'trouble';
  readonly stays?: boolean;
  /** Closed without doing anything about it. */
  readonly onClose?: () => void;
  readonly act?: { readonly words: string; readonly run: () => void };
};

/** A notice is put up on the way to another screen, and stays for that one. */
const SCREENS_SHOWN = 2;

const NoticeContext = createContext<(notice: Notice | null) => void>(() => {});

/** Puts up a notice; null takes it down. */
export const useNotice = () => useContext(NoticeContext);

export function NoticeBoard({ children }: { readonly children: ComponentChildren }) {
  const [notice, setNotice] = useState<Notice | null>(null);
  const [staying, setStaying] = useState<readonly Notice[]>([]);
  const seenOn = useRef(0);
  const show = useCallback((next: Notice | null) => {
    if (next?.stays) return setStaying((before) => [...before.filter(({ words }) => words !== next.words), next]);
    seenOn.current = 0;
    setNotice(next);
  }, []);
  useEffect(() => {
    const moveOn = () => {
      seenOn.current += 1;
      if (seenOn.current >= SCREENS_SHOWN) setNotice(null);
    };
    addEventListener('hashchange', moveOn);
    return () => removeEventListener('hashchange', moveOn);
  }, []);
  return (
    <NoticeContext.Provider value={show}>
      {children}
      <div class="notice-place" role="status">
        {staying.map((each) => (
          <NoticeSlip
            key={each.words}
            notice={each}
            onClose={() => setStaying((before) => before.filter((other) => other !== each))}
          />
        ))}
        {notice && <NoticeSlip notice={notice} onClose={() => setNotice(null)} />}
      </div>
    </NoticeContext.Provider>
  );
}

function NoticeSlip({ notice, onClose }: { readonly notice: Notice; readonly onClose: () => void }) {
  const { say } = useWords();
  const { act } = notice;
  return (
    <div class={`notice ${notice.kind ?? ''}`}>
      <p>{notice.words}</p>
      {act && (
        <button
          type="button"
          class="quiet"
          onClick={() => {
            onClose();
            act.run();
          }}
        >
          {act.words}
        </button>
      )}
      <button
        type="button"
        class="quiet round"
        aria-label={say('screen.close')}
        onClick={() => {
          notice.onClose?.();
          onClose();
        }}
      >
        <Icon name="cross" />
      </button>
    </div>
  );
}
