import type { ComponentChildren } from 'preact';
import { ChoicePicture, sayFirst, useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import type { Theme } from './themes';

type FoldedThemeProps = {
  readonly theme: Theme;
  /** What she chose herself; the rest is as usual. */
  readonly chosen: Readonly<Record<string, unknown>>;
  readonly children: ComponentChildren;
};

/** Choices that belong together, folded: what they are about, and how they stand. */
export function FoldedTheme({ theme, chosen, children }: FoldedThemeProps) {
  const { say } = useWords();
  const own = theme.choices.filter(
    ({ name, choice, value }) => chosen[name] !== undefined && value !== choice.fallback,
  );
  const stands = own.map(({ name, choice, value }) =>
    choice.kind === 'yes'
      ? say('screen.theme.look', { name: say(`choice.${name}.name`), value: say(`screen.choices.${value}`) })
      : sayFirst(say, [`choice.${name}.${value}`, `choice.${name}.name`]),
  );
  const [shown] = own.length > 0 ? own : theme.choices;
  return (
    <Folded
      picture={shown && <ChoicePicture choice={shown.name} value={String(shown.value)} />}
      title={say(`screen.theme.${theme.id}`)}
      stands={own.length > 0 ? say('list.row', { of: stands }) : say('screen.theme.usual')}
    >
      <div class="theme">{children}</div>
    </Folded>
  );
}
