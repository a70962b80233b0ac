import { type ComponentChildren, createContext } from 'preact';
import { useCallback, useContext, useEffect, useRef, useState } from 'preact/hooks';
import { Icon, useWords } from '../../../parts';
import { useRoute } from '../route';
import './notice.css';

/**
 * Something said at the foot of whatever screen is shown, until it is closed, replaced, or left behind. One that `stays`
 * stands until it is closed, on every screen, beside whatever comes after it. While she measures, only trouble is told:
 * the keys stay where they are, and what is not urgent waits.
 */
export type Notice = {
  readonly words: string;
  readonly kind?: 'trouble';
  readonly stays?: boolean;
  /** Closed without doing anything about it. */
  readonly onClose?: () => void;
  readonly act?: { readonly words: string; readonly run: () => unknown };
};

/** Where she has the tape in hand, or fields under her thumb. */
const MEASURING = ['marks', 'measure', 'wishes', 'typed'];

/** A notice is put up on the way to another screen, and stays for that one. */
const SCREENS_SHOWN = 2;

const NoticeContext = createContext<(notice: Notice | null) => void>(() => {});

/** Puts up a notice; null takes it down. */
export const useNotice = () => useContext(NoticeContext);

export function NoticeBoard({ children }: { readonly children: ComponentChildren }) {
  const [notice, setNotice] = useState<Notice | null>(null);
  const [staying, setStaying] = useState<readonly Notice[]>([]);
  const seenOn = useRef(0);
  const measuring = MEASURING.includes(useRoute().parts[3] ?? '');
  const told = [...staying, ...(notice ? [notice] : [])].filter(({ kind }) => kind === 'trouble' || !measuring);
  const place = useRoomFor();
  const show = useCallback((next: Notice | null) => {
    if (next?.stays) return setStaying((before) => [...before.filter(({ words }) => words !== next.words), next]);
    seenOn.current = 0;
    setNotice(next);
  }, []);
  useEffect(() => {
    const moveOn = () => {
      if (!measuring) seenOn.current += 1;
      if (seenOn.current >= SCREENS_SHOWN) setNotice(null);
    };
    addEventListener('hashchange', moveOn);
    return () => removeEventListener('hashchange', moveOn);
  }, [measuring]);
  return (
    <NoticeContext.Provider value={show}>
      {children}
      <div class="notice-place" role="status" ref={place}>
        {told.map((each) => (
          <NoticeSlip
            key={each.words}
            notice={each}
            onClose={() =>
              each === notice ? setNotice(null) : setStaying((before) => before.filter((other) => other !== each))
            }
          />
        ))}
      </div>
    </NoticeContext.Provider>
  );
}

/** Keeps as much room at the foot of the page as the notices there take, so that they lie over nothing. */
function useRoomFor() {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!place.current) return;
    const watch = new ResizeObserver(([entry]) => {
      const height = entry?.borderBoxSize[0]?.blockSize ?? 0;
      document.documentElement.style.setProperty('--notices', `${Math.ceil(height)}px`);
    });
    watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  return place;
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
