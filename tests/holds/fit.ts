import type { Draft } from '../../app/drafting/draft-types';

/** No finished girth is less than this over the body's (drafting: ease). */
const LEAST_EASE_MM = 4;
const SLACK_MM = 0.5;
/** A hood lies on the head: its edge has 0–2 %, its crown is as long as the arc (drafting: hood). */
const SURFACES: readonly string[] = ['face', 'hood-depth', 'crown'];

const leastFor = (place: string) => (SURFACES.includes(place) ? 0 : LEAST_EASE_MM);

/** Every finished place has its ease, or the draft says why not; what does not pass is said. */
export function brokenFit(draft: Draft): string[] {
  const tight = draft.fit.filter((row) => !row.why && row.ease < leastFor(row.place) - SLACK_MM);
  const blocked = draft.openings.filter((row) => row.gives < row.needs);
  const said = draft.flags.filter((flag) => flag.code === 'will-not-pass');
  return [
    ...tight.map((row) => `fit ${row.place}: ${row.garment} over ${row.body}`),
    ...draft.fit
      .filter((row) => ![row.body, row.garment, row.ease].every(Number.isFinite))
      .map((row) => `fit ${row.place} is no number`),
    ...(blocked.length > said.length
      ? [`will not pass ${blocked.map((row) => row.through)}, and nothing says so`]
      : []),
  ];
}
