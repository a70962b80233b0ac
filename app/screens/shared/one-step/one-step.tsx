import type { ComponentChildren, ComponentProps } from 'preact';
import { footBar, Header, TapeLine, useHeading } from '../../../parts';
import './one-step.css';

type OneStepProps = Pick<ComponentProps<typeof Header>, 'back' | 'whose' | 'detail' | 'end'> & {
  readonly title: string;
  readonly progress: { readonly done: number; readonly all: number };
  readonly picture: ComponentChildren;
  /** What to do next, under the thumb. */
  readonly acts: ComponentChildren;
  /** What is said under the title. */
  readonly children: ComponentChildren;
};

/** One step at once, for a phone that lies beside the work: the picture takes what the words leave. */
export function OneStep({ title, progress, picture, acts, children, ...header }: OneStepProps) {
  const heading = useHeading(title);
  return (
    <div class="one-step">
      <Header {...header} progress={progress} />
      <TapeLine {...progress} />
      <div class="one-step-picture">{picture}</div>
      <main class="one-step-words" aria-live="polite">
        <h1 tabIndex={-1} ref={heading}>
          {title}
        </h1>
        {children}
      </main>
      <footer class="one-step-acts" ref={footBar}>
        {acts}
      </footer>
    </div>
  );
}
