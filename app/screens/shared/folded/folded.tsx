import type { ComponentChildren } from 'preact';
import { Icon } from '../../../parts';
import './folded.css';

/** A row like the others that leads to a screen of its own. */
export function RowLink({
  href,
  title,
  stands,
}: {
  readonly href: string;
  readonly title: string;
  readonly stands: string;
}) {
  return (
    <a class="folded row-link" href={href}>
      <b>{title}</b>
      <span>{stands}</span>
      <Icon name="on" />
    </a>
  );
}

type FoldedProps = {
  readonly title: string;
  /** How it stands, in a few words, so that it need not be opened to be known. */
  readonly stands?: ComponentChildren;
  readonly picture?: ComponentChildren;
  readonly open?: boolean;
  readonly onOpen?: () => void;
  readonly children: ComponentChildren;
};

/** A row that folds open: what it is about, how it stands, and all of it on wish. */
export function Folded({ title, stands, picture, open, onOpen, children }: FoldedProps) {
  return (
    <details class="folded" open={open} onToggle={(event) => event.currentTarget.open && onOpen?.()}>
      <summary>
        {picture && <i>{picture}</i>}
        <b>{title}</b>
        {stands && <span>{stands}</span>}
      </summary>
      <div class="folded-inside">{children}</div>
    </details>
  );
}
