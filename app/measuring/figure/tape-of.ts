import type { Nature } from '../../body';
import { bearing, moved, type Point, right, subtract } from '../../body/point';
import { bandRound, middleOf } from './band';
import { crowdOf } from './crowd';
import type { Frame } from './drawing';
import { placeLabels, type Wanted } from './labels';
import type { Guide, TapeRow } from './lay';
import { type Laid, outlineOf } from './lay-tape';
import { smoothPath, smoothPoints, straightPath } from './smooth';
import type { Part, Stage } from './stage';
import { alongLine, lengthOf } from './strip';

/** The marks at a tape's ends, and how they shrink on a short one. */
const DOT = 6;
const ARROW = { long: 13, half: 7 };
const ROOM_FOR_MARKS = 55;
const SMALLEST_MARK = 0.66;
/** Parts that no word and no leader should cover. */
const FACE: readonly string[] = ['eye', 'muzzle', 'nose'];

/** How far apart the places are that words keep off. */
const SPACE = 7;

/** A tape laid on a stage as everything that is drawn of it. */
export function tapeOf(
  laid: Laid,
  stage: Stage,
  { guides = [], named }: Pick<TapeRow<string, string>, 'guides' | 'named'>,
  { nature, frame }: { readonly nature: Nature; readonly frame: Frame },
) {
  const { way, ring } = laid;
  const start = way[0] ?? { x: 0, y: 0 };
  const last = way.at(-1) ?? start;
  const ahead = bearing(subtract(last, way.at(-2) ?? start));
  const shown = laid.hidden.length > 0 ? lengthOf(laid.visible[0]?.points ?? []) : lengthOf(way);
  const size = Math.min(Math.max(shown / ROOM_FOR_MARKS, SMALLEST_MARK), 1);
  const end = ring ? moved(start, ahead, -DOT * size - 1) : last;
  const taken = [...laid.visible, ...laid.hidden].flatMap(({ points }) => spaced(points));
  const crowd = crowdOf(
    frame,
    outlinesOf(stage, ({ look }) => look.startsWith('fur')),
  );
  const face = crowdOf(
    frame,
    outlinesOf(stage, ({ name }) => FACE.includes(name)),
  );
  const ends: readonly Wanted[] = ring
    ? [{ word: 'meet', mark: start }]
    : [
        { word: 'start', mark: start },
        { word: 'end', mark: moved(end, ahead, -5) },
      ];
  const line = named && stage.places[named.at];
  const wanted = line ? [...ends, { word: named.word, mark: line }] : ends;
  return {
    ring,
    visible: laid.visible,
    hidden: laid.hidden,
    guides: guides.map((guide) => smoothPath(guideLine(guide, stage), false)),
    start,
    end,
    arrival: Math.atan2(ahead.y, ahead.x),
    dot: DOT * size,
    arrow: arrowPath(end, ahead, size),
    way: smoothPath(way, false),
    labels: placeLabels(frame, wanted, {
      taken: [...taken, start, end],
      crowd,
      face,
      byPhoto: nature === 'straight',
    }),
  };
}

const outlinesOf = (stage: Stage, wanted: (part: Part) => boolean): Point[][] =>
  stage.parts.filter((part) => part.closed && wanted(part)).map(({ points }) => smoothPoints(points, true));

function guideLine(guide: Guide<string>, stage: Stage): Point[] {
  const place = (name: string): Point => stage.places[name] ?? { x: 0, y: 0 };
  if (!('of' in guide)) return guide.map(place);
  return middleOf(bandRound(outlineOf(stage, guide.of), place(guide.at), place(guide.toward), 1).near);
}

function arrowPath(tip: Point, ahead: Point, size: number): string {
  const back = moved(tip, ahead, -ARROW.long * size);
  const aside = right(ahead);
  return straightPath([tip, moved(back, aside, ARROW.half * size), moved(back, aside, -ARROW.half * size)], true);
}

/** Places along a line, near enough together that no word slips between. */
function spaced(line: readonly Point[]): Point[] {
  const steps = Math.max(Math.ceil(lengthOf(line) / SPACE), 1);
  return Array.from({ length: steps + 1 }, (_, step) => alongLine(line, step / steps));
}
