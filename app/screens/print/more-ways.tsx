import { useState } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import { forms, type Layout, type Print, prints } from '../../drafting/sheets';
import { Icon, Picks, useWords } from '../../parts';
import { drawSvg, printTest, writeTwin } from '../../work/bridge';
import { Checks } from '../shared/checks/checks';
import { fileName } from '../shared/file-name';
import { Folded } from '../shared/folded/folded';
import type { Making } from '../shared/making/making';
import { PdfAct } from '../shared/pdf-act';
import { saveFile } from '../shared/save-file';
import { toggled } from '../shared/toggled';
import { useAttempt } from '../shared/trouble/attempt';
import { useOthers } from './others';
import type { PrintWish } from './wish';

type MoreWaysProps = {
  readonly making: Making;
  readonly draft: Draft | null;
  /** How this toy's own pieces lie on paper, once they do. */
  readonly layout: Layout | undefined;
  readonly paper: string;
  readonly halves: boolean;
  readonly size: Print;
  readonly wish: PrintWish;
  readonly others: readonly Making[];
  readonly onWish: (wish: PrintWish) => void;
  readonly onOthers: (others: readonly Making[]) => void;
  readonly onHalves: (halves: boolean) => void;
  readonly onSize: (size: Print) => void;
};

const MOST_COPIES = 4;

/** All that few printings need, folded away; where something is chosen, the row says so. */
export function MoreWays(props: MoreWaysProps) {
  const { making, draft, layout, paper, halves, size, wish, others, onWish, onOthers, onHalves, onSize } = props;
  const { say, hand } = useWords();
  const [asked, setAsked] = useState(false);
  // An outfit is this toy's own.
  const known = useOthers(asked && making.also.length === 0, making);
  const attempt = useAttempt();
  const name = [making.toy.name, say(`garment.${making.garment.order.garment}.name`)].join(' ');
  const written = { language: hand.locale, units: hand.unit };
  const save = (type: string, ending: string, make: (draft: Draft) => Promise<string>) =>
    attempt(async () => {
      if (draft) saveFile(new Blob([await make(draft)], { type }), `${fileName(name, 'pattern')}.${ending}`);
    });
  const svg = () => save('image/svg+xml', 'svg', (each) => drawSvg(each, wish.form, written));
  const twin = () =>
    save('text/html', 'html', (each) => writeTwin({ draft: each, layout }, { ...written, way: 'machine' }));
  const chosen = [
    ...(size === 'usual' ? [] : [say(`screen.print.size.${size}`)]),
    ...(wish.form === 'cut' ? [] : [say(`screen.print.form.${wish.form}`)]),
    ...(wish.without.length > 0 ? [say('screen.print.without', { count: wish.without.length })] : []),
    ...(wish.list ? [say('screen.print.list-short')] : []),
    ...(wish.copies > 1 ? [say('screen.print.copies-of', { count: wish.copies })] : []),
    ...others.map(({ toy }) => toy.name),
  ];
  return (
    <Folded
      title={say('screen.print.more')}
      stands={chosen.length > 0 ? say('list.row', { of: chosen }) : say('screen.print.more-stands')}
      onOpen={() => setAsked(true)}
    >
      <div class="print-more">
        <Picks
          legend={say('screen.print.size.name')}
          chosen={size}
          onPick={onSize}
          picks={prints.map((each) => ({ value: each, words: say(`screen.print.size.${each}`) }))}
        />
        <Picks
          legend={say('screen.print.form.name')}
          chosen={wish.form}
          onPick={(form) => onWish({ ...wish, form })}
          picks={forms.map((form) => ({ value: form, words: say(`screen.print.form.${form}`) }))}
        />
        {wish.form !== 'card' && (
          <Picks
            legend={say('screen.print.pieces')}
            chosen={halves ? 'halves' : 'whole'}
            onPick={(value) => onHalves(value === 'halves')}
            picks={(['halves', 'whole'] as const).map((value) => ({ value, words: say(`screen.print.${value}`) }))}
          />
        )}
        {draft && draft.pieces.length > 1 && (
          <Checks
            legend={say('screen.print.which')}
            rows={draft.pieces.map(({ name: piece }, index) => ({
              value: index,
              words: say(`piece.${piece}`),
              on: !wish.without.includes(index),
            }))}
            onToggle={(index) => {
              const without = toggled(wish.without, index);
              if (without.length < draft.pieces.length) onWish({ ...wish, without });
            }}
          />
        )}
        {known && known.length > 0 && (
          <Checks
            legend={say('screen.print.others')}
            rows={known.map((other) => ({ value: other, words: other.toy.name, on: others.includes(other) }))}
            onToggle={(other) => onOthers(toggled(others, other))}
          />
        )}
        <Checks
          legend={say('screen.print.beside')}
          rows={[{ value: 'list', words: say('screen.print.list'), on: wish.list }]}
          onToggle={() => onWish({ ...wish, list: !wish.list })}
        />
        <Picks
          legend={say('screen.print.copies')}
          chosen={String(wish.copies)}
          onPick={(value) => onWish({ ...wish, copies: Number(value) })}
          picks={Array.from({ length: MOST_COPIES }, (_, n) => ({ value: String(n + 1), words: String(n + 1) }))}
        />
        <div class="print-files">
          <PdfAct
            words={say('screen.print.test')}
            name={say('screen.print.test-file')}
            make={(to) => printTest(paper, to)}
          />
          <button type="button" class="plain" disabled={!draft} onClick={svg}>
            <Icon name="save" />
            {say('screen.print.svg')}
          </button>
          <p class="soft small">{say('screen.print.svg-what')}</p>
          <button type="button" class="plain" disabled={!draft} onClick={twin}>
            <Icon name="save" />
            {say('screen.print.twin')}
          </button>
          <p class="soft small">{say('screen.print.twin-what')}</p>
        </div>
      </div>
    </Folded>
  );
}
