import { type ComponentChildren, createContext } from 'preact';
import { useCallback, useContext, useState } from 'preact/hooks';
import { Icon, useWords } from '../../parts';
import './notice.css';

/** Something said at the foot of whatever screen is shown, until it is closed or another takes its place. */
export type Notice = {
  readonly words: string;
  readonly kind?: 'trouble';
  readonly act?: { readonly words: string; readonly run: () => void };
};

const NoticeContext = createContext<(notice: Notice | null) => void>(() => {});

/** Puts up a notice; null takes it down. */
export const useNotice = () => useContext(NoticeContext);

export function NoticeBoard({ children }: { readonly children: ComponentChildren }) {
  const [notice, setNotice] = useState<Notice | null>(null);
  const show = useCallback((next: Notice | null) => setNotice(next), []);
  return (
    <NoticeContext.Provider value={show}>
      {children}
      <div class="notice-place" role="status">
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
      <button type="button" class="quiet round" aria-label={say('screen.close')} onClick={onClose}>
        <Icon name="cross" />
      </button>
    </div>
  );
}
