import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Mm } from '../../body';
import type { Draft } from '../../drafting/draft-types';
import { type Guide, guideOf, type Way, ways } from '../../drafting/guide';
import { changeGarment, type Settings, setSetting, settings } from '../../storage';
import { bodyKnown, type Making } from '../shared/making/making';
import { type DrawingState, draftOf, useDraft } from '../shared/making/use-draft';
import { useAttempt } from '../shared/trouble/attempt';
import { noteHappening } from '../shared/trouble/happened';

const WAY = 'sewing-way';
const SEAM = 'device-seam-mm';

/** The sewing of one garment: how it is drawn, its guide, how far she is, and how she sews. */
export type Sewing = {
  readonly drawn: DrawingState;
  readonly draft: Draft | null;
  readonly guide: Guide | null;
  readonly sewn: readonly string[];
  readonly tick: (step: string, done: boolean) => Promise<void>;
  readonly way: Way;
  readonly setWay: (way: Way) => void;
  /** How wide her own seams came out in the check; null while nobody measured. */
  readonly seam: Mm | null;
  readonly setSeam: (seam: Mm) => void;
};

export function useSewing(making: Making): Sewing {
  const { toy, garment } = making;
  const attempt = useAttempt();
  const drawn = useDraft(bodyKnown(making), garment.order, toy.name);
  const draft = draftOf(drawn);
  const guide = useMemo(() => draft && guideOf(draft), [draft]);
  const sewn = garment.sewn ?? [];
  const [kept, setKept] = useState<Settings>({});
  useEffect(() => {
    settings().then(setKept, noteHappening);
  }, []);
  const keep = (key: string, value: string | number) => {
    setKept({ ...kept, [key]: value });
    void attempt(() => setSetting(key, value));
  };
  const seam = kept[SEAM];
  return {
    drawn,
    draft,
    guide,
    sewn,
    tick: (step, done) =>
      changeGarment(garment.id, { sewn: done ? [...new Set([...sewn, step])] : sewn.filter((each) => each !== step) }),
    way: ways.find((each) => each === kept[WAY]) ?? 'machine',
    setWay: (way) => keep(WAY, way),
    seam: typeof seam === 'number' ? seam : null,
    setSeam: (mm) => keep(SEAM, mm),
  };
}

/** The steps that are not sewn yet begin here; null when all are. */
export function nextOf({ guide, sewn }: Pick<Sewing, 'guide' | 'sewn'>): string | null {
  return guide?.steps.find(({ id }) => !sewn.includes(id))?.id ?? null;
}
