import type { Making } from '../shared/making/making';
import { WithPattern } from '../shared/making/with-pattern';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { Trouble } from '../shared/trouble/trouble';
import { StepPage } from './step-page';
import { useSewing } from './use-sewing';

/** One step of sewing, one screen. */
export function SewStepScreen({ params }: ScreenProps) {
  return <WithPattern params={params}>{(making) => <Found making={making} step={params.step ?? ''} />}</WithPattern>;
}

function Found({ making, step }: { readonly making: Making; readonly step: string }) {
  const sewing = useSewing(making);
  const { guide, drawn } = sewing;
  const sew = to('toy', making.toy.id, making.garment.id, 'sew');
  const at = guide?.steps.findIndex(({ id }) => id === step) ?? -1;
  const gone = (guide !== null && at < 0) || drawn.is === 'refused' || drawn.is === 'failed';
  const found = guide?.steps[at];
  if (gone) return <Trouble code="step-gone" act={{ words: 'screen.back', run: () => location.replace(sew) }} />;
  if (!guide || !found) return <main class="loading" aria-busy="true" />;
  return <StepPage key={step} making={making} sewing={sewing} guide={guide} step={found} at={at} />;
}
