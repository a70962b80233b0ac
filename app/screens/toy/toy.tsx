import { useState } from 'preact/hooks';
import { Icon, Page, useWords } from '../../parts';
import { addCard, cardOf, changeToy, removeToy } from '../../storage';
import { PhotoActs } from '../shared/face/photo-acts';
import { ToyFace } from '../shared/face/toy-face';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { useNotice } from '../shared/trouble/notice';
import { useUndo } from '../shared/trouble/undo';
import { Learnt } from '../shared/trying/learnt';
import { type Known, WithToy } from '../shared/with-toy';
import { GarmentRows } from './garment-rows';
import { Readings } from './readings';
import { Rename } from './rename';
import { UnitPicks } from './unit-picks';
import '../shared/more-acts.css';
import './toy.css';

/** One toy: its face, what was made for it, its numbers and their history. */
export function ToyScreen({ params }: ScreenProps) {
  return <WithToy toyId={params.toy ?? ''}>{(known) => <ToyPage known={known} />}</WithToy>;
}

function ToyPage({ known }: { readonly known: Known }) {
  const { say } = useWords();
  const { toy, garments } = known;
  return (
    <Page
      wide
      title={toy.name}
      back={to()}
      acts={
        <a class="go" href={to('toy', toy.id, 'make')}>
          {say(garments.length > 0 ? 'screen.toy.make-more' : 'screen.toy.make')}
        </a>
      }
    >
      <div class="columns toy-columns">
        <div class="column">
          <div class="toy-top">
            <ToyFace toyId={toy.id} />
            <PhotoActs of={toy.id} changedAt={toy.changedAt} touch={() => changeToy(toy.id, {})} />
          </div>
          {garments.length > 0 && <GarmentRows known={known} />}
        </div>
        <Readings known={known} />
        <div class="column">
          <Learnt toy={toy} />
          <UnitPicks toy={toy} />
          <MoreActs known={known} />
        </div>
      </div>
    </Page>
  );
}

/** What is seldom wanted: another name, how the toy is built, a copy, goodbye. */
function MoreActs({ known: { toy } }: { readonly known: Known }) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  const backTo = useUndo();
  const [renaming, setRenaming] = useState(false);
  const copy = () =>
    attempt(async () => {
      const copied = await addCard(await cardOf(toy.id, hand.unit));
      go(to('toy', copied.id));
      notice({ words: say('screen.toy.copied', { name: copied.name }) });
    });
  const remove = () =>
    attempt(async () => {
      const undo = await removeToy(toy.id);
      go(to(), 'replace');
      notice({
        words: say('screen.toy.removed', { name: toy.name }),
        act: backTo(undo, toy.name),
      });
    });
  if (renaming) return <Rename toy={toy} onDone={() => setRenaming(false)} />;
  return (
    <ul class="more-acts">
      <li>
        <a class="quiet" href={to('toy', toy.id, 'share')}>
          <Icon name="share" />
          {say('screen.toy.share')}
        </a>
      </li>
      <li>
        <button type="button" class="quiet" onClick={() => setRenaming(true)}>
          <Icon name="pencil" />
          {say('screen.toy.rename')}
        </button>
      </li>
      <li>
        <a class="quiet" href={`${to('toy', toy.id, 'looks')}?edit`}>
          <Icon name="scissors" />
          {say('screen.toy.looks')}
        </a>
      </li>
      <li>
        <button type="button" class="quiet" onClick={copy}>
          <Icon name="copy" />
          {say('screen.toy.copy')}
        </button>
      </li>
      <li>
        <button type="button" class="quiet warn" onClick={remove}>
          <Icon name="bin" />
          {say('screen.toy.remove')}
        </button>
      </li>
    </ul>
  );
}
