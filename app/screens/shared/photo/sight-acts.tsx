import type { ComponentChildren } from 'preact';
import { useWords } from '../../../parts';

type SightActsProps = {
  /** Back to choosing a photo. */
  readonly onOther: () => void;
  /** What the act on is called, and what it does: nothing as long as nothing was read. */
  readonly use: string;
  readonly onUse: (() => void) | null;
  readonly children?: ComponentChildren;
};

/** What can be done with a photo that is being marked. */
export function SightActs({ onOther, use, onUse, children }: SightActsProps) {
  const { say } = useWords();
  return (
    <>
      <button type="button" class="quiet" onClick={onOther}>
        {say('photo.other')}
      </button>
      {children}
      <button type="button" class="go" disabled={onUse === null} onClick={() => onUse?.()}>
        {use}
      </button>
    </>
  );
}
