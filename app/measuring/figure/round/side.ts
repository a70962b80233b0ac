import { point } from '../../../body/point';
import { tuft } from '../head/front';
import { sideEar, sideFace, sideHeadPlaces } from '../head/side';
import { groundUnder, shadeOf } from '../shade';
import { limb, oval, station } from '../shapes';
import { closed, type Stage } from '../stage';
import { bodyOutline } from './body';
import type { RoundForm } from './form';

/** A round toy is a little less deep than wide. */
const DEEP = 0.94;

/** A round toy from its left side, its face to the viewer's right. */
export function roundSide(form: RoundForm) {
  const body = bodyOutline(form, DEEP);
  const { ground, base, bodyHalf, wingHalf, wingHeight } = form;
  const wingAxis = [point(-4, wingHeight + 4), point(-8, wingHeight + 28), point(-16, wingHeight + 50)];
  const wing = limb(wingAxis, [wingHalf, 1.05 * wingHalf, 0.6 * wingHalf]);
  const tailRoot = point(-0.8 * bodyHalf, 0.45 * base);
  const tailAxis = [tailRoot, point(tailRoot.x - 24, tailRoot.y - 2), point(tailRoot.x - 42, tailRoot.y - 20)];
  const tail = limb(tailAxis, [form.tailHalf, form.tailThick, 0.45 * form.tailThick]);
  const [tailBase, tailThick] = [station(tailAxis, 0.25), station(tailAxis, 0.55)];
  const ruler = bodyHalf + 30;
  const places = {
    ...sideHeadPlaces(form.head),
    base: point(0, 4 * ground),
    waist: point(0, form.waistHeight),
    wingFore: point(wingHalf - 4, wingHeight + 4),
    wingAft: point(-wingHalf - 4, wingHeight + 4),
    wingLevel: point(wingHalf - 4, wingHeight + 4),
    rulerWing: point(ruler, wingHeight + 4),
    rulerTable: point(ruler, ground),
    tableLeft: point(-bodyHalf, ground),
    tailBase: tailBase.at,
    tailBaseToward: tailBase.toward,
    tailThick: tailThick.at,
    tailThickToward: tailThick.toward,
  };
  return {
    parts: [
      groundUnder(0, ground - 1, 0.95 * bodyHalf),
      ...(form.traits.tail ? [closed('tail', 'fur-deep', tail)] : []),
      closed('trunk', 'fur', body),
      ...shadeOf(body, point(-form.topHalf, -form.topHeight), point(-8, base), 9),
      closed('foot', 'fur-deep', oval(point(8, base), 20, 7.5)),
      ...(form.traits.ears === 'top' ? [] : tuft(point(0, -form.top))),
      ...sideEar(form.head),
      ...sideFace(form.head),
      closed('wing', 'fur-deep', wing),
    ],
    places,
    shots: {
      wing: [...wing, point(-0.8 * bodyHalf, wingHeight - 34), point(0.8 * bodyHalf, wingHeight + 60)],
      ruler: [...body, places.rulerTable, places.tableLeft],
      tail: [...tail, point(0.1 * bodyHalf, -0.35 * form.top), point(0.1 * bodyHalf, ground)],
    },
    marks: [
      { id: 'face', mark: 'thread', of: 'trunk', at: point(0, -form.neckHeight), toward: places.base, bow: false },
      { id: 'fullest', mark: 'thread', of: 'trunk', at: point(0, 0), toward: places.base, bow: false },
    ],
  } satisfies Stage;
}
