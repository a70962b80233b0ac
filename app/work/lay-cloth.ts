import type { Answer } from '../drafting/cloth';
import type { AtWork, ClothGiven } from './jobs';

/** So long at a stretch, ms; then whoever asked may say stop. */
const STRETCH_MS = 40;

/** Looks for a lay as long as it is given, telling each better answer as it comes; ends sooner where none can be better. */
export async function layCloth(given: ClothGiven, { signal, progress }: AtWork): Promise<Answer> {
  const { cutsOf, layOnCloth } = await import('../drafting/cloth');
  const { drafts, layers, stuff, seconds, seed = 1 } = given;
  const cuts = cutsOf(drafts).filter(({ layer }) => layers.includes(layer));
  const begun = performance.now();
  const share = () => Math.min(1, (performance.now() - begun) / (seconds * 1000));
  let told: Answer | undefined;
  let rested = begun;
  for (const { best } of layOnCloth(cuts, stuff, seed)) {
    if (best !== told) progress(share(), best);
    told = best;
    if (signal.aborted || share() >= 1) break;
    if (performance.now() - rested < STRETCH_MS) continue;
    progress(share());
    await breath();
    rested = performance.now();
  }
  return told ?? { kind: 'searching', left: [] };
}

/** Lets what came in meanwhile be heard. */
const breath = (): Promise<void> =>
  new Promise((done) => {
    setTimeout(done, 0);
  });
