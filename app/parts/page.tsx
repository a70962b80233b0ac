import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { footBar, headBar } from './bar';
import { Icon } from './icon';
import { useWords } from './say';
import './page.css';

export type PageProps = {
  readonly title: string;
  /** The address of the screen this one was opened from. */
  readonly back?: string;
  /** What stands beside the way back: whose clothes, which garment. */
  readonly whose?: ComponentChildren;
  readonly detail?: ComponentChildren;
  readonly end?: ComponentChildren;
  readonly progress?: { readonly done: number; readonly all: number };
  /** What lies right under the header. */
  readonly under?: ComponentChildren;
  /** What to do next, always within reach of the thumb. */
  readonly acts?: ComponentChildren;
  readonly wide?: boolean;
  readonly children: ComponentChildren;
};

/** A screen that is read from top to bottom: header, title, content, and the way on held at the lower edge. */
export function Page(props: PageProps) {
  const heading = useHeading(props.title);
  return (
    <div class={props.wide ? 'page wide' : 'page'}>
      <Header {...props} bar={headBar} />
      {props.under}
      <main class="page-main">
        <h1 tabIndex={-1} ref={heading}>
          {props.title}
        </h1>
        {props.children}
      </main>
      {props.acts && (
        <footer class="page-acts" ref={footBar}>
          {props.acts}
        </footer>
      )}
    </div>
  );
}

type HeaderProps = Pick<PageProps, 'back' | 'whose' | 'detail' | 'end' | 'progress'> & {
  /** Where it is held at the upper edge of the window. */
  readonly bar?: typeof headBar;
};

/** The line at the top of every screen. */
export function Header({ back, whose, detail, end, progress, bar }: HeaderProps) {
  const { say } = useWords();
  return (
    <header class="header" ref={bar ?? null}>
      {back && (
        <a class="header-back" href={back} aria-label={say('screen.back')}>
          <Icon name="back" />
        </a>
      )}
      <p class="header-whose">
        {whose && <b>{whose}</b>} {detail && <span>{detail}</span>}
      </p>
      {progress && <p class="header-count">{say('screen.progress', { step: progress.done, all: progress.all })}</p>}
      {end}
    </header>
  );
}

/**
 * Names the browser's tab, and takes a screen reader to the title of the screen just opened: before it is painted, else
 * a quick hand is in its first field already and what it types there is lost.
 */
export function useHeading(title: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus({ preventScroll: true }), []);
  useEffect(() => {
    document.title = `${title} · Hemling`;
  }, [title]);
  return heading;
}
