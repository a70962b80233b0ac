import { useId, useState } from 'preact/hooks';
import { parseLength, unitFace } from '../../body';
import { CHECK_STRIPS_MM, seamFrom } from '../../drafting/guide';
import { fieldText, Page, useWords } from '../../parts';
import { saveGarment } from '../../storage';
import type { Making } from '../shared/making/making';
import { WithPattern } from '../shared/making/with-pattern';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { useNotice } from '../shared/trouble/notice';
import { useUndo } from '../shared/trouble/undo';
import { StripsPicture } from './strips-picture';
import { useSewing } from './use-sewing';
import '../shared/making/amount-field.css';

/** Seams so near what was asked are as good as a tape can tell, mm. */
const NEAR_MM = 0.5;

/** Three strips sewn together show how wide her own seams come out; the guide or the allowances follow. */
export function SeamScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <SeamPage making={making} />}</WithPattern>;
}

function SeamPage({ making }: { readonly making: Making }) {
  const { toy, garment } = making;
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  const backTo = useUndo();
  const id = useId();
  const sewing = useSewing(making);
  const [text, setText] = useState('');
  const parsed = text.trim() === '' ? null : parseLength(text, hand);
  const seam = parsed?.ok ? seamFrom(parsed.mm) : null;
  const asked = Math.max(0, ...(sewing.draft?.pieces ?? []).flatMap(({ edges }) => seamsOf(edges)));
  const off = seam === null ? 0 : seam - CHECK_STRIPS_MM.seam;
  const inside = CHECK_STRIPS_MM.width - 2 * CHECK_STRIPS_MM.seam;
  const follow = () =>
    attempt(async () => {
      const { order } = garment;
      const wide = Math.round((asked + off) * 10) / 10;
      sewing.setSeam(seam ?? CHECK_STRIPS_MM.seam);
      await saveGarment(toy.id, { ...order, allowances: { ...order.allowances, seam: wide } }, garment.id);
      notice({
        words: say('screen.sew.seam-followed', { seam: wide, unit: hand.unit }),
        act: backTo(() => saveGarment(toy.id, order, garment.id)),
      });
    });
  return (
    <Page
      title={say('screen.sew.seam-title')}
      back={to('toy', toy.id, garment.id, 'sew')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`garment.${garment.order.garment}.name`)}
      acts={
        <a class="go" href={to('toy', toy.id, garment.id, 'sew')} onClick={() => seam !== null && sewing.setSeam(seam)}>
          {say(seam === null ? 'screen.not-now' : 'screen.done')}
        </a>
      }
    >
      <StripsPicture />
      <p>{say('screen.sew.seam-how', { ...CHECK_STRIPS_MM, inside, unit: hand.unit })}</p>
      <div class="amount">
        <label for={id}>{say('screen.sew.seam-middle')}</label>
        <span class="amount-field">
          <input
            id={id}
            value={text}
            inputMode="text"
            autoComplete="off"
            placeholder={fieldText(inside, hand)}
            aria-invalid={text !== '' && seam === null}
            aria-describedby={`${id}-said`}
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <span class="soft">{unitFace(hand)}</span>
        </span>
      </div>
      <p id={`${id}-said`} role="status">
        {text !== '' && seam === null && say('screen.sew.seam-wrong')}
        {seam !== null &&
          say(`screen.sew.seam-${Math.abs(off) <= NEAR_MM ? 'true' : off > 0 ? 'wide' : 'narrow'}`, {
            seam,
            off: Math.abs(off),
            taken: Math.abs(off) * TWO_SEAMS,
            unit: hand.unit,
          })}
      </p>
      {seam !== null && Math.abs(off) > NEAR_MM && (
        <>
          <p>{say('screen.sew.seam-guide', { off: Math.abs(off), unit: hand.unit })}</p>
          <p>{say('screen.sew.seam-or')}</p>
          <button type="button" class="plain" disabled={asked === 0} onClick={follow}>
            {say('screen.sew.seam-follow', { seam: asked + off, unit: hand.unit })}
          </button>
        </>
      )}
    </Page>
  );
}

/** Two side seams, both layers each. */
const TWO_SEAMS = 4;

const seamsOf = (edges: readonly { readonly role: string; readonly allowance: number }[]) =>
  edges.flatMap(({ role, allowance }) => (role === 'seam' ? [allowance] : []));
