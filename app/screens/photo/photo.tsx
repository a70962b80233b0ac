import { useState } from 'preact/hooks';
import { findMeasure, type Known } from '../../body';
import { saveReading } from '../../storage';
import type { Making } from '../shared/making/making';
import { WithMaking } from '../shared/making/with-making';
import { openPicture } from '../shared/photo/open-picture';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { Trouble } from '../shared/trouble/trouble';
import { Intro } from './intro';
import { LengthSight } from './length-sight';

/** A measured guess: a straight measure read off a photo with a bank-size card in it. `?then=` is the step's own. */
export function PhotoScreen({ params, query }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => {
        const measure = findMeasure(params.measure ?? '');
        const step = to('toy', making.toy.id, making.garment.id, 'measure', params.measure ?? '');
        if (measure?.nature !== 'straight')
          return (
            <Trouble code="step-gone" act={{ words: 'screen.trouble.review', run: () => location.replace(step) }} />
          );
        const then = query.get('then');
        return <PhotoPage making={making} measure={measure.id} back={then ? `${step}?then=${then}` : step} />;
      }}
    </WithMaking>
  );
}

type PhotoPageProps = {
  readonly making: Making;
  readonly measure: NonNullable<ReturnType<typeof findMeasure>>['id'];
  readonly back: string;
};

/** The photo lives in this screen's memory only, and is gone with it. */
function PhotoPage({ making, measure, back }: PhotoPageProps) {
  const { toy, readings } = making;
  const attempt = useAttempt();
  const [picture, setPicture] = useState<HTMLCanvasElement | null>(null);
  const open = (file: File) => attempt(async () => setPicture(await openPicture(file)));
  const use = ({ value }: Known) =>
    attempt(async () => {
      await saveReading(toy.id, measure, value, 'photo', { anew: readings[measure] !== undefined });
      go(back, 'replace');
    });
  return picture ? (
    <LengthSight
      picture={picture}
      measure={measure}
      toy={toy}
      back={back}
      onUse={use}
      onOther={() => setPicture(null)}
    />
  ) : (
    <Intro measure={measure} toy={toy} back={back} onFile={open} />
  );
}
