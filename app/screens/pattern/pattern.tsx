import { Icon, Page, useWords } from '../../parts';
import { DressedPanel } from '../shared/dressed/dressed-panel';
import { RowLink } from '../shared/folded/folded';
import { bodyShown } from '../shared/making/body-of';
import { DoubtCard } from '../shared/making/doubt-card';
import { DrawnHeard } from '../shared/making/drawn-heard';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithPattern } from '../shared/making/with-pattern';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { troubleWords } from '../shared/trouble/attempt';
import { Again } from './again';
import { Changed } from './changed';
import { FitTable } from './fit-table';
import { GoesOn } from './goes-on';
import { Notions } from './notions';
import { PiecesView } from './pieces-view';
import { Whom } from './whom';
import { WishFields } from './wish-fields';
import { WorthChecking } from './worth-checking';
import './pattern.css';

/** The pattern: the toy in it and its pieces, then what was changed for it, whether it goes on, and how it fits. */
export function PatternScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <PatternPage making={making} />}</WithPattern>;
}

function PatternPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment } = making;
  const drawn = useDraft(bodyKnown(making), garment.order, toy.name);
  usePlace(toy.id, garment.id, 'pattern');
  const draft = draftOf(drawn);
  const whose = say('screen.making.whose', { name: toy.name, garment: say(`garment.${garment.order.garment}.name`) });
  const here = (screen: string) => to('toy', toy.id, garment.id, screen);
  return (
    <Page
      wide
      title={whose}
      back={here('review')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      acts={
        <>
          <a class="plain" href={`${here('choices')}?then=pattern`}>
            <Icon name="pencil" />
            {say('screen.pattern.change')}
          </a>
          {drawn.is === 'drawn' && (
            <a class="go" href={here('print')}>
              {say('screen.pattern.print')}
            </a>
          )}
        </>
      }
    >
      <DrawnHeard draft={draft} />
      <div role="status" class="pattern-state">
        {drawn.is === 'drawing' && !draft && <p class="soft">{say('screen.pattern.drawing')}</p>}
        {drawn.is === 'failed' && <p class="slip warn">{troubleWords(say, drawn.code)}</p>}
        {drawn.is === 'refused' && <p>{say('screen.pattern.refused')}</p>}
      </div>
      {drawn.is === 'refused' &&
        drawn.flags.map((flag) => (
          <DoubtCard key={flag.code + flag.measures.join()} making={making} flag={flag} then="pattern" />
        ))}
      {draft && (
        <div class={drawn.is === 'drawing' ? 'pattern drawing' : 'pattern'}>
          <div class="pattern-worn">
            <DressedPanel body={bodyShown(making.body)} draft={draft} busy={drawn.is === 'drawing'} text={whose} />
            <GoesOn draft={draft} />
          </div>
          <PiecesView draft={draft} />
          <div class="pattern-told">
            <Again draft={draft} making={making} />
            <Changed draft={draft} making={making} />
            <WorthChecking draft={draft} making={making} />
            <FitTable draft={draft} />
            <WishFields making={making} />
            <Notions draft={draft} />
            <RowLink
              href={here('cloth')}
              title={say('screen.pattern.cloth')}
              stands={say('screen.pattern.cloth-stands')}
            />
            <Whom draft={draft} making={making} />
            <RowLink href={here('fits')} title={say('screen.fits.row')} stands={say('screen.fits.stands')} />
            <RowLink href={here('sew')} title={say('screen.pattern.sew')} stands={say('screen.pattern.sew-stands')} />
            <RowLink href={here('kept')} title={say('screen.kept.title')} stands={say('screen.kept.stands')} />
          </div>
        </div>
      )}
    </Page>
  );
}
